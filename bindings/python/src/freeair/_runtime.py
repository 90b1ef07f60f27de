# SPDX-License-Identifier: MIT
"""How a call reaches the C library: checking, arrays, errors.

What each function takes is not written here: the library describes itself
(freeair_function_find and its kin), and this module reads that description.
"""

import collections
import ctypes
import functools
import math
import warnings

from ._errors import ERRORS, FreeairError, FreeairWarning
from ._library import LIBRARY

try:
    import numpy
except ImportError:  # scalars work without
    numpy = None

DOUBLE, INT32, UINT32, SIZE, TEXT, STRUCTURE = 1, 2, 3, 4, 5, 6
OUTPUT, ARRAY, OPTIONAL, LOWER_CLOSED, UPPER_CLOSED = 1, 2, 4, 8, 16
TRUNCATED = 4  # status: an array was too short for every row
FIRST_ROOM, MOST_ROOM = 256, 1 << 19  # rows of an array whose length the caller leaves to us
C_TYPES = {DOUBLE: ctypes.c_double, INT32: ctypes.c_int32, UINT32: ctypes.c_uint32, SIZE: ctypes.c_size_t,
           TEXT: ctypes.c_char_p}
DTYPES = {DOUBLE: "float64", INT32: "int32", UINT32: "uint32", SIZE: "uintp"}


class _Parameter(ctypes.Structure):
    _fields_ = [(n, ctypes.c_char_p) for n in ("name", "brief", "unit", "range", "fallback", "choice")]
    _fields_ += [("structure", ctypes.c_void_p), ("lower", ctypes.c_double), ("upper", ctypes.c_double),
                 ("type", ctypes.c_int32), ("flags", ctypes.c_uint32), ("offset", ctypes.c_uint32),
                 ("size", ctypes.c_uint32), ("length_index", ctypes.c_int32), ("stride_index", ctypes.c_int32)]


def _declare(name, restype, *argtypes):
    function = getattr(LIBRARY, name)
    function.restype, function.argtypes = restype, list(argtypes)
    return function


_P, _S = ctypes.c_void_p, ctypes.c_size_t
_find = _declare("freeair_function_find", _P, ctypes.c_char_p)
_parameter_count = _declare("freeair_function_parameter_count", _S, _P)
_parameter = _declare("freeair_function_parameter", ctypes.POINTER(_Parameter), _P, _S)
_structure_count = _declare("freeair_structure_count", _S)
_structure_at = _declare("freeair_structure_at", _P, _S)
_structure_name = _declare("freeair_structure_name", ctypes.c_char_p, _P)
_structure_size = _declare("freeair_structure_size", _S, _P)
_structure_field_count = _declare("freeair_structure_field_count", _S, _P)
_structure_field = _declare("freeair_structure_field", ctypes.POINTER(_Parameter), _P, _S)
_structure_init = _declare("freeair_structure_init", ctypes.c_int32, _P, _P, _S)
_map = _declare("freeair_map", _S, _P, _S, _P, _P, _P)
_status_name = _declare("freeair_status_name", ctypes.c_char_p, ctypes.c_int32)
_status_text = _declare("freeair_status_text", ctypes.c_char_p, ctypes.c_int32)

Argument = collections.namedtuple(
    "Argument", "name brief unit range choice structure lower upper type flags size offset length stride")


def _argument(p):
    structure = _structure_name(p.structure).decode() if p.structure else None
    return Argument(p.name.decode(), p.brief.decode(), p.unit.decode(), p.range.decode(), p.choice.decode(), structure,
                    p.lower, p.upper, p.type, p.flags, p.size, p.offset, p.length_index, p.stride_index)


def _outside(argument, value):
    """Is a plain number outside the argument's documented range?"""
    if math.isnan(value):
        return not argument.flags & OPTIONAL
    if math.isnan(argument.lower):
        return False
    above = value >= argument.lower if argument.flags & LOWER_CLOSED else value > argument.lower
    below = value <= argument.upper if argument.flags & UPPER_CLOSED else value < argument.upper
    return not (above and below)


class Structure:
    """Base of the library's structures: fields by keyword, None or NaN for "not given"."""

    _c_name = None

    def __init__(self, **fields):
        layout = _layout(self._c_name)
        object.__setattr__(self, "_memory", ctypes.create_string_buffer(layout.size))
        _structure_init(layout.handle, self._memory, layout.size)
        for name, value in fields.items():
            setattr(self, name, value)

    @classmethod
    def _from_memory(cls, data):
        instance = cls()
        ctypes.memmove(instance._memory, data, len(data))
        return instance

    def _field(self, name):
        fields = _layout(self._c_name).fields
        if name not in fields:
            raise AttributeError(f"{type(self).__name__} has no field {name!r}; it has {', '.join(fields)}")
        return fields[name]

    def __getattr__(self, name):
        field = self._field(name)
        return C_TYPES[field.type].from_buffer(self._memory, field.offset).value

    def __setattr__(self, name, value):
        field = self._field(name)
        if value is None:
            value = math.nan
        if field.type != DOUBLE:
            value = _whole(value, field)
        C_TYPES[field.type].from_buffer(self._memory, field.offset).value = value

    def __dir__(self):
        return list(super().__dir__()) + list(_layout(self._c_name).fields)

    def __repr__(self):
        shown = ((name, getattr(self, name)) for name in _layout(self._c_name).fields)
        inside = ", ".join(f"{n}={v!r}" for n, v in shown if not (isinstance(v, float) and math.isnan(v)))
        return f"{type(self).__name__}({inside})"

    def __eq__(self, other):
        return type(self) is type(other) and self._memory.raw == other._memory.raw

    __hash__ = None

    def __copy__(self):
        return self._from_memory(self._memory.raw)

    def __deepcopy__(self, memo):
        return self._from_memory(self._memory.raw)

    def __reduce__(self):
        return (_restore, (type(self), self._memory.raw))

    def as_dict(self):
        """The fields by name; NaN where one is not given."""
        return {name: getattr(self, name) for name in _layout(self._c_name).fields}


def _restore(cls, data):
    return cls._from_memory(data)


Layout = collections.namedtuple("Layout", "handle size fields")
STRUCTURES = {}  # C name -> Python class, filled by the generated module


@functools.lru_cache(maxsize=None)
def _layout(c_name):
    for i in range(_structure_count()):
        handle = _structure_at(i)
        if _structure_name(handle).decode() == c_name:
            fields = (_argument(_structure_field(handle, k).contents) for k in range(_structure_field_count(handle)))
            return Layout(handle, _structure_size(handle),
                          {f.name: f for f in fields if f.name not in ("struct_size", "flags")})
    raise ImportError(f"the library does not know the structure {c_name}")


def _all_optional(c_name):
    """May a structure be left out, since each of its fields has a default?"""
    return all(field.flags & OPTIONAL for field in _layout(c_name).fields.values())


def _whole(value, argument):
    number = int(value)
    if number != value:
        raise TypeError(f"{argument.name} takes a whole number, not {value!r}")
    return number


def _error(name, arguments, values, status):
    """The exception for a status: names the argument at fault where the ranges tell which."""
    kind = ERRORS.get(status, FreeairError)
    text = _status_text(status).decode()
    short = name[len("freeair_"):]
    for argument, value in _plain_values(arguments, values):
        if status == -2 and _outside(argument, value):
            unit = "" if argument.unit in ("", "1", "any") else " " + argument.unit
            message = f"{short}: {argument.name} = {value:g}{unit} is outside its range {argument.range or 'of numbers'}"
            return kind(message, status=status, function=short, argument=argument.name, value=value,
                        range=argument.range)
    given = ", ".join(f"{a.name} = {v:g}" for a, v in zip(arguments, values)
                      if isinstance(v, (int, float)) and not math.isnan(v))
    return kind(f"{short}: {text}" + (f" ({given})" if given else ""), status=status, function=short)


def _plain_values(arguments, values):
    for argument, value in zip(arguments, values):
        if isinstance(value, Structure):
            for field in _layout(argument.structure).fields.values():
                yield field._replace(name=f"{argument.name}.{field.name}"), float(getattr(value, field.name))
        elif isinstance(value, (int, float)):
            yield argument, float(value)


class Call:
    """One function of the library, ready to be called."""

    def __init__(self, name):
        handle = _find(name.encode())
        if not handle:
            raise ImportError(f"the library has no function {name}; it is older than this binding")
        self.name, self.handle = name, handle
        self.arguments = [_argument(_parameter(handle, i).contents) for i in range(_parameter_count(handle))]
        strides = {a.stride for a in self.arguments if a.stride >= 0}
        fed = {a.length for a in self.arguments if a.flags & ARRAY and not a.flags & OUTPUT}
        # what the caller passes, in order: not outputs, not strides, not the lengths of input arrays
        self.inputs = [i for i, a in enumerate(self.arguments)
                       if not a.flags & OUTPUT and i not in strides and i not in fed]
        self.outputs = [i for i, a in enumerate(self.arguments) if a.flags & OUTPUT]
        self.has_arrays = any(a.flags & ARRAY for a in self.arguments)
        self.strides, self.fed = strides, fed
        # the count that says how much of an output array was filled
        counts = [i for i in self.outputs if self.arguments[i].type == SIZE and not self.arguments[i].flags & ARRAY]
        self.found = {}
        for i in self.outputs:
            a = self.arguments[i]
            if a.flags & ARRAY and a.length not in fed and counts:
                wanted = (self.arguments[a.length].name + "_found", "n_" + a.name)
                named = [k for k in counts if self.arguments[k].name in wanted]
                self.found[i] = named[0] if named else counts[0] if len(counts) == 1 else None
        # rows there is room for, of arrays whose filled part is counted: the caller may leave them to us
        self.capacities = {self.arguments[i].length for i, count in self.found.items() if count is not None}
        self.function = getattr(LIBRARY, name)
        self.function.restype = ctypes.c_int32

    def __call__(self, values, result=None):
        if any(_is_array(self.arguments[i], v) for i, v in zip(self.inputs, values)):
            outputs = self._mapped(values)[0]
        else:
            outputs = self._single(values)
        return outputs[0] if len(outputs) == 1 else result(*outputs) if result else tuple(outputs)

    def _single(self, values):
        given = dict(zip(self.inputs, values))
        own = [i for i in self.capacities if given[i] is None]
        room = FIRST_ROOM
        while True:
            given.update((i, room) for i in own)
            status, cells, lengths = self._run(given)
            if status != TRUNCATED or room >= MOST_ROOM or not self._full(own, cells, room):
                break
            room *= 4
        self._judge(status, [self.arguments[i] for i in self.inputs], [given[i] for i in self.inputs])
        return [self._result(i, cells, lengths) for i in self.outputs
                if i not in self.found.values()]

    def _full(self, own, cells, room):
        """Has an array whose length was left to us no row to spare?"""
        return any(self.arguments[i].length in own and cells[count].contents.value >= room
                   for i, count in self.found.items() if count is not None)

    def _run(self, given):
        cells, keep, lengths = {}, [], {}
        for i, argument in enumerate(self.arguments):
            if i in given and argument.flags & ARRAY and given[i] is not None:
                lengths[argument.length] = len(given[i])
            elif i in given and argument.type == SIZE:
                lengths[i] = _whole(given[i], argument)
        for i, argument in enumerate(self.arguments):
            cells[i] = self._cell(i, argument, given, lengths, keep)
        return self.function(*(cells[i] for i in range(len(self.arguments)))), cells, lengths

    def _cell(self, i, argument, given, lengths, keep):
        if i in self.strides:
            owner = next(a for a in self.arguments if a.stride == i)
            return ctypes.c_size_t(owner.size)
        if argument.flags & ARRAY:
            n = lengths.get(argument.length, 0)
            if i in given and given[i] is None:
                return None
            if argument.structure:
                cell = ctypes.create_string_buffer(argument.size * max(n, 1))
                layout = _layout(argument.structure)
                for k in range(n):
                    at = ctypes.byref(cell, k * argument.size)
                    _structure_init(layout.handle, at, argument.size)
                    if i in given:
                        ctypes.memmove(at, given[i][k]._memory, argument.size)
                return cell
            cell = (C_TYPES[argument.type] * max(n, 1))()
            if i in given:
                if n != len(given[i]):
                    raise ValueError(f"{argument.name} has {len(given[i])} elements where {n} are wanted")
                cell[:n] = [float(v) if argument.type == DOUBLE else _whole(v, argument) for v in given[i]]
            return cell
        if i in self.fed:
            return ctypes.c_size_t(lengths.get(i, 0))
        if argument.structure:
            if i in given and given[i] is None and argument.flags & OPTIONAL:
                return None
            if i in given and (given[i] is not None or not _all_optional(argument.structure)):
                wanted = STRUCTURES[argument.structure]
                if not isinstance(given[i], wanted):
                    raise TypeError(f"{argument.name} takes a {wanted.__name__}, not {type(given[i]).__name__}")
                return given[i]._memory
            return STRUCTURES[argument.structure]()._memory
        if argument.flags & OUTPUT:
            cell = C_TYPES[argument.type]()
            keep.append(cell)
            return ctypes.pointer(cell)
        return self._scalar(argument, given[i])

    @staticmethod
    def _scalar(argument, value):
        if argument.type == TEXT:
            if value is None:
                return None
            if not isinstance(value, str):
                raise TypeError(f"{argument.name} takes text, not {type(value).__name__}")
            return ctypes.c_char_p(value.encode())
        if value is None:
            value = math.nan
        if argument.type == DOUBLE:
            return ctypes.c_double(value)
        return C_TYPES[argument.type](_whole(value, argument))

    def _result(self, i, cells, lengths):
        argument, cell = self.arguments[i], cells[i]
        if argument.flags & ARRAY:
            n = lengths.get(argument.length, 0)
            if self.found.get(i) is not None:
                n = min(n, cells[self.found[i]].contents.value)
            if argument.structure:
                cls = STRUCTURES[argument.structure]
                return [cls._from_memory(cell.raw[k * argument.size:(k + 1) * argument.size]) for k in range(n)]
            listed = list(cell[:n])
            return numpy.array(listed, dtype=DTYPES[argument.type]) if numpy is not None else listed
        if argument.structure:
            return STRUCTURES[argument.structure]._from_memory(cell.raw)
        value = cell.contents.value
        return value.decode() if isinstance(value, bytes) else value

    def _judge(self, status, arguments, values):
        if status < 0:
            raise _error(self.name, arguments, values, status)
        if status > 0:
            warnings.warn(f"{self.name[len('freeair_'):]}: {_status_text(status).decode()}", FreeairWarning,
                          stacklevel=5)

    def _mapped(self, values):
        """Broadcasts over arrays with freeair_map; returns the outputs and the status of each element."""
        if numpy is None:
            raise TypeError(f"{self.name}: arrays need NumPy, which is not installed")
        if self.has_arrays:
            raise TypeError(f"{self.name} takes arrays of its own; call it once for each test")
        given = dict(zip(self.inputs, values))
        arrays = {}
        for i, value in given.items():
            argument = self.arguments[i]
            if argument.type in DTYPES:
                array = numpy.asarray(math.nan if value is None else value)
                if argument.type != DOUBLE and not numpy.array_equal(array, array.astype(DTYPES[argument.type])):
                    raise TypeError(f"{argument.name} takes whole numbers")
                arrays[i] = numpy.asarray(array, dtype=DTYPES[argument.type])
        broadcast = numpy.broadcast_arrays(*arrays.values())
        shape, n = broadcast[0].shape, broadcast[0].size
        cells, steps, keep, outputs = [], [], [], []
        flat = dict(zip(arrays, broadcast))
        for i, argument in enumerate(self.arguments):
            if i in flat:
                source, original = flat[i], arrays[i]
                if original.size == 1:
                    held, step = numpy.ascontiguousarray(original.reshape(-1)), 0
                elif source.ndim == 1:
                    held, step = source, source.strides[0]
                else:
                    held = numpy.ascontiguousarray(source).reshape(-1)
                    step = held.itemsize
                keep.append(held)
                cells.append(held.ctypes.data)
                steps.append(step)
            elif i in given:
                one = self._cell(i, argument, given, {}, keep)
                if argument.type == TEXT:
                    one = ctypes.pointer(one)
                keep.append(one)
                cells.append(ctypes.cast(one, _P).value)
                steps.append(0)
            elif argument.structure:
                layout = _layout(argument.structure)
                held = numpy.tile(numpy.frombuffer(STRUCTURES[argument.structure]()._memory.raw, dtype="u1"), n)
                keep.append(held)
                outputs.append((argument, held))
                cells.append(held.ctypes.data)
                steps.append(layout.size)
            else:
                held = numpy.zeros(n, dtype=DTYPES[argument.type])
                outputs.append((argument, held))
                cells.append(held.ctypes.data)
                steps.append(held.itemsize)
        status = numpy.zeros(n, dtype=numpy.int32)
        _map(self.handle, n, (ctypes.c_void_p * len(cells))(*cells), (ctypes.c_ssize_t * len(steps))(*steps),
             status.ctypes.data)
        self._judge_many(status, flat)
        return [self._shaped(a, held, shape) for a, held in outputs], status.reshape(shape)

    @staticmethod
    def _shaped(argument, held, shape):
        if not argument.structure:
            return held.reshape(shape) if shape else held[0]
        cls, size = STRUCTURES[argument.structure], argument.size
        each = numpy.empty(len(held) // size, dtype=object)
        for k in range(len(each)):
            each[k] = cls._from_memory(held[k * size:(k + 1) * size].tobytes())
        return each.reshape(shape)

    def _judge_many(self, status, flat):
        bad = numpy.flatnonzero(status)
        if not len(bad):
            return
        order = numpy.flatnonzero(status < 0)
        first = int(order[0] if len(order) else bad[0])
        values = [float(v.reshape(-1)[first]) for v in flat.values()]
        text = (_error(self.name, [self.arguments[i] for i in flat], values, int(status[first])).args[0]
                if status[first] < 0 else f"{self.name[len('freeair_'):]}: {_status_text(int(status[first])).decode()}")
        warnings.warn(f"{len(bad)} of {len(status)} elements: the first, at {first}: {text}", FreeairWarning,
                      stacklevel=5)


def _is_array(argument, value):
    if argument.flags & ARRAY or argument.type not in DTYPES or isinstance(value, (int, float, str, type(None))):
        return False
    return hasattr(value, "__len__") or (hasattr(value, "shape") and value.shape != ())


@functools.lru_cache(maxsize=None)
def call(name):
    return Call(name)


def map_status(function, **values):
    """Calls a function of this package on arrays and returns (result, status of each element).

    Nothing is raised for an element that fails: its outputs are NaN and its
    status is negative.
    """
    entry = call("freeair_" + function.__name__)
    names = [entry.arguments[i].name for i in entry.inputs]
    unknown = set(values) - set(names)
    if unknown:
        raise TypeError(f"{function.__name__} takes no {', '.join(sorted(unknown))}")
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", FreeairWarning)
        outputs, status = entry._mapped([values.get(n) for n in names])
    return (outputs[0] if len(outputs) == 1 else tuple(outputs)), status


def query(name, restype, argtypes, values):
    """Calls a function that returns a value rather than a status."""
    function = getattr(LIBRARY, name)
    function.restype, function.argtypes = restype, argtypes
    result = function(*(v.encode() if isinstance(v, str) else v for v in values))
    return result.decode() if isinstance(result, bytes) else result
