# SPDX-License-Identifier: MIT
"""Builds the C library into the package, so that pip alone is enough.

The sources are those of the tree that this folder stands in. The package that
comes out loads its own copy, unless FREEAIR_LIBRARY names another.
"""

import pathlib

from setuptools import Extension, setup
from setuptools.command.build_ext import build_ext

TREE = pathlib.Path(__file__).resolve().parent.parent.parent


class PlainLibrary(build_ext):
    """A plain shared library: nothing of Python is in it."""

    def get_export_symbols(self, ext):
        return []

    def build_extension(self, ext):
        # Absolute, so that the objects land below the build folder and not beside it.
        ext.sources = sorted(str(path) for folder in ("lib", "lib/internal", "lib/generated")
                             for path in (TREE / folder).glob("*.c"))
        super().build_extension(ext)


setup(
    ext_modules=[
        Extension(
            "freeair._bundled",
            sources=[],
            include_dirs=[str(TREE / "include"), str(TREE / "lib")],
            define_macros=[("FREEAIR_BUILD", "1")],
            extra_compile_args=["-std=c11", "-O2", "-ffp-contract=off", "-fvisibility=hidden"],
            libraries=["m"],
        )
    ],
    cmdclass={"build_ext": PlainLibrary},
)
