# SPDX-License-Identifier: MIT
"""bindings/api.json keeps its schema."""

import json
import os
import pathlib
import sys

import jsonschema

bindings = pathlib.Path(os.environ.get("top_srcdir", ".")) / "bindings"
api = json.loads((bindings / "api.json").read_text(encoding="utf-8"))
schema = json.loads((bindings / "api.schema.json").read_text(encoding="utf-8"))
validator_class = jsonschema.validators.validator_for(schema)
validator_class.check_schema(schema)
faults = list(validator_class(schema).iter_errors(api))
for fault in faults[:20]:
    print("/".join(str(p) for p in fault.absolute_path) + ": " + fault.message[:200])
print(f"{len(api['functions'])} functions, {len(api['structures'])} structures, {len(faults)} faults")
sys.exit(1 if faults else 0)
