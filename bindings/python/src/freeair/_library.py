# SPDX-License-Identifier: MIT
"""Finds the C library and loads it."""

import ctypes
import ctypes.util
import importlib.machinery
import os
import pathlib

from ._version import VERSION, VERSION_NUMBER


def _candidates():
    named = os.environ.get("FREEAIR_LIBRARY")
    if named:
        yield named
        return
    here = pathlib.Path(__file__).parent
    for suffix in importlib.machinery.EXTENSION_SUFFIXES:
        path = here / ("_bundled" + suffix)
        if path.exists():
            yield str(path)
    found = ctypes.util.find_library("freeair")
    if found:
        yield found
    yield "libfreeair.so.0"


def _load():
    tried = []
    for name in _candidates():
        try:
            library = ctypes.CDLL(name)
        except OSError as reason:
            tried.append(f"{name} ({reason})")
            continue
        try:
            library.freeair_version_number.restype = ctypes.c_uint32
            have = library.freeair_version_number()
        except AttributeError:
            tried.append(f"{name} (not libfreeair)")
            continue
        if have < VERSION_NUMBER:
            library.freeair_version_text.restype = ctypes.c_char_p
            tried.append(f"{name} (release {library.freeair_version_text().decode()} is too old: this binding "
                         f"needs {VERSION} or newer)")
            continue
        return library
    raise ImportError("cannot load libfreeair; tried " + "; ".join(tried)
                      + ". Install the library, or name it in the environment variable FREEAIR_LIBRARY.")


LIBRARY = _load()
