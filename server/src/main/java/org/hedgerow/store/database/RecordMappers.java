package org.hedgerow.store.database;

import java.lang.reflect.Type;
import java.util.Optional;
import org.jdbi.v3.core.config.ConfigRegistry;
import org.jdbi.v3.core.generic.GenericTypes;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.mapper.RowMapperFactory;
import org.jdbi.v3.core.mapper.reflect.ConstructorMapper;

/**
 * Reads any record from a row by the names of its components, so that no record need be registered.
 */
public final class RecordMappers implements RowMapperFactory {
  @Override
  public Optional<RowMapper<?>> build(Type type, ConfigRegistry config) {
    Class<?> erased = GenericTypes.getErasedType(type);
    return erased.isRecord() ? Optional.of(ConstructorMapper.of(erased)) : Optional.empty();
  }
}
