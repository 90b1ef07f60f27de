#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Writes every generated file of the project from the public headers.

    generate.py --srcdir DIR               write into the source tree
    generate.py --srcdir DIR --check       compare with it instead; exit 1 on any difference
"""

import argparse
import json
import pathlib
import sys

import emit_c
import emit_python
import emit_readme
import extract


def outputs(srcdir):
    version = extract.read_version(srcdir)
    headers = ["export"] + [t for _, t in extract.topics_in_order(srcdir)
               if (srcdir / "include" / "freeair" / (t + ".h")).exists() or t == "version"]
    template = (srcdir / "bindings" / "generate" / "freeair.h.in").read_text(encoding="utf-8")
    first = {
        "include/freeair/version.h": emit_c.version_header(version),
        "include/freeair/freeair.h": emit_c.umbrella(None, template, headers),
    }
    yield first
    api = extract.extract(srcdir)
    yield {
        "README.md": emit_readme.readme(srcdir, api),
        "bindings/api.json": json.dumps(api, indent=1, ensure_ascii=False) + "\n",
        "lib/generated/describe_tables.c": emit_c.tables(api),
        "lib/generated/freeair.map": emit_c.symbol_map(api),
        "lib/generated/structures.c": emit_c.structures(api, extract.defined_by_hand(srcdir)),
        "tests/generated/redeclare.c": emit_c.redeclare(api),
        "bindings/python/src/freeair/_generated.py": emit_python.module(api),
        "bindings/python/src/freeair/_generated.pyi": emit_python.stub(api),
        "bindings/python/src/freeair/_version.py": emit_python.version(api),
    }


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--srcdir", required=True, type=pathlib.Path)
    parser.add_argument("--check", action="store_true")
    options = parser.parse_args()
    srcdir = options.srcdir.resolve()
    stale = []
    # The headers that are generated come first: the rest is extracted from them.
    for batch in outputs(srcdir):
        for name, text in batch.items():
            path = srcdir / name
            present = path.read_text(encoding="utf-8") if path.exists() else None
            if present == text:
                continue
            stale.append(name)
            if not options.check:
                path.parent.mkdir(parents=True, exist_ok=True)
                path.write_text(text, encoding="utf-8")
    if options.check and stale:
        sys.exit("not up to date, run make regen: " + " ".join(stale))
    for name in stale:
        print("wrote", name)


if __name__ == "__main__":
    main()
