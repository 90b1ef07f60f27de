# SPDX-License-Identifier: MIT
"""What a call that fails raises, and what one with a reservation warns with."""


class FreeairError(Exception):
    """A call failed. The library's outputs would all be NaN."""

    def __init__(self, message, *, status, function, argument=None, value=None, range=None):
        super().__init__(message)
        self.status = status  # the library's code, for example freeair.ERR_DOMAIN
        self.function = function
        self.argument = argument  # name of the argument at fault, where one can be named
        self.value = value
        self.range = range


class DomainError(FreeairError, ValueError):
    """An argument is not a number, infinite, or outside its documented range."""


class NoSolutionError(FreeairError, ArithmeticError):
    """The arguments are in range, but no state satisfies them together."""


class NoConvergenceError(FreeairError, ArithmeticError):
    """An iteration reached its documented limit."""


class ResultOverflowError(FreeairError, OverflowError):
    """The result is too large to represent."""


class StructureVersionError(FreeairError, TypeError):
    """A structure's size is not one the library knows."""


class DataError(FreeairError, ValueError):
    """Too few usable data points."""


class NotFoundError(FreeairError, LookupError):
    """No entry has this name."""


class DimensionError(FreeairError, ValueError):
    """The unit measures another kind of quantity."""


class NullError(FreeairError, TypeError):
    """A required argument is missing."""


class UnsupportedError(FreeairError, TypeError):
    """The function cannot be called in this way."""


class FreeairWarning(UserWarning):
    """The result is valid, with a reservation."""


ERRORS = {-1: NullError, -2: DomainError, -3: NoSolutionError, -4: NoConvergenceError, -5: ResultOverflowError,
          -6: StructureVersionError, -7: DataError, -8: NotFoundError, -9: DimensionError, -10: UnsupportedError}
