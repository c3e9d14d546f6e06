package org.hedgerow.app;

import io.micrometer.core.instrument.binder.MeterBinder;
import io.micrometer.core.instrument.binder.jvm.ClassLoaderMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.FileDescriptorMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.core.instrument.binder.system.UptimeMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.util.List;

/** The registry of everything that is measured, with what the Java runtime itself has to tell. */
final class Metrics {
  private Metrics() {}

  static PrometheusMeterRegistry create() {
    PrometheusMeterRegistry registry = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    List<MeterBinder> runtime =
        List.of(
            new ClassLoaderMetrics(),
            new JvmMemoryMetrics(),
            new JvmThreadMetrics(),
            new ProcessorMetrics(),
            new FileDescriptorMetrics(),
            new UptimeMetrics());
    runtime.forEach(binder -> binder.bindTo(registry));
    return registry;
  }
}
