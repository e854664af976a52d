"use strict";
SwaggerUIBundle({ url: "/openapi.yaml", dom_id: "#docs", validatorUrl: null, deepLinking: true });
