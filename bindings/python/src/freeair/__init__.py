# SPDX-License-Identifier: MIT
"""Compressed-air engineering functions: the Python binding of libfreeair.

Everything is coherent SI: pascal absolute, kelvin, cubic metre, second. The
unit of an argument is the end of its name. Functions take keyword arguments;
NumPy arrays broadcast, plain numbers in give plain numbers out. An error raises
a FreeairError that names the argument, a reservation warns with FreeairWarning.

    >>> import freeair
    >>> round(freeair.atmosphere_pressure_from_altitude(altitude_m=1500))
    84556
"""

from ._errors import (  # noqa: F401
    DataError,
    DimensionError,
    DomainError,
    FreeairError,
    FreeairWarning,
    NoConvergenceError,
    NoSolutionError,
    NotFoundError,
    NullError,
    ResultOverflowError,
    StructureVersionError,
    UnsupportedError,
)
from ._runtime import Structure, map_status  # noqa: F401
from ._generated import *  # noqa: F401,F403
from ._version import VERSION as __version__  # noqa: F401
