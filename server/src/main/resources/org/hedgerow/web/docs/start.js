"use strict";

SwaggerUIBundle({
  url: "/api/v1/openapi.yaml",
  dom_id: "#document",
  deepLinking: true,
  validatorUrl: null, // nothing is sent to other sites
});
