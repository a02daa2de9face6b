"""Reference rows, run through the quantity layer: the same files as in C++, with the texts as they stand."""

from __future__ import annotations

import json
import math
from pathlib import Path
from typing import Any

import fieldshaft
from fieldshaft import _core, _formulas
from fieldshaft._kinds import KINDS
from fieldshaft._quantities import Caller
from fieldshaft._records import Record, Sourced, Validated

FOLDER = Path(__file__).resolve().parents[1] / "reference"

#: How rows name objects that are not a struct with its fields.
SHAPES = {
    "solid": "SolidSection",
    "tube": "TubeSection",
    "profile": "ProfileSection",
    "straight": "StraightSpline",
    "involute": "InvoluteSpline",
}


def all_rows() -> list[dict[str, Any]]:
    return [row for path in sorted(FOLDER.glob("*.json")) for row in json.loads(path.read_text(encoding="utf-8"))]


def caller(name: str) -> Caller | None:
    return getattr(_formulas, "_" + name, None)


def python_name(name: str) -> str:
    return name + "_" if name in ("yield", "lambda", "from", "in") else name


def read(value: Any, kind: str) -> Any:
    """A value of a row as an argument: texts and numbers as they stand, objects made from their fields."""
    if isinstance(value, list) and kind.startswith("list["):
        return [read(entry, kind[5:-1]) for entry in value]
    if isinstance(value, list) and isinstance(getattr(fieldshaft, kind, None), type):
        return getattr(fieldshaft, kind)(*value)
    if not isinstance(value, dict):
        return value
    if kind == "PtoType":
        return fieldshaft.pto_type(value["number"])
    if len(value) == 1:
        ((name, inner),) = value.items()
        if name in SHAPES and (not kind or SHAPES[name] in kind.split("|")):
            cls = getattr(fieldshaft, SHAPES[name])
            if isinstance(inner, dict):
                return cls(**{python_name(k): v for k, v in inner.items()})
            return cls(*inner) if isinstance(inner, list) else cls(inner)
        if name in ("wet", "dry", "grain", "other_than_grain"):
            return fieldshaft.FeedRate(inner, name)
        if callable(getattr(fieldshaft, name, None)) and isinstance(inner, dict):
            return call(name, inner)
    alternatives = [name for name in kind.split("|") if isinstance(getattr(fieldshaft, name, None), type)]
    cls = getattr(fieldshaft, alternatives[0])
    kinds = dict(zip(cls._names(), cls._types, strict=True)) if hasattr(cls, "_types") else {}
    return cls(**{python_name(k): read(v, kinds.get(python_name(k), "")) for k, v in value.items()})


def arguments(name: str, given: dict[str, Any]) -> dict[str, Any]:
    found = caller(name)
    kinds = dict(found.parameters) if found else {"line": "SnLine|TorqueSnLine"}
    return {python_name(k): read(v, kinds.get(python_name(k), "")) for k, v in given.items()}


def call(name: str, given: dict[str, Any]) -> Any:
    return getattr(fieldshaft, name)(**arguments(name, given))


def unwrapped(value: Any) -> Any:
    while isinstance(value, Validated | Sourced):
        value = value.value
    return value


def follow(result: Any, path: str) -> Any:
    """The part of a result that a row names, such as involute.pitch_diameter."""
    value = unwrapped(result)
    if path == "value" and not isinstance(value, Record):
        return value
    if path == "value" and isinstance(value, fieldshaft.Money):
        return value.amount
    for name in path.split("."):
        value = unwrapped(getattr(value, python_name(name)))
    return value.amount if isinstance(value, fieldshaft.Money) else value


def number_of(value: Any) -> float:
    if hasattr(value, "_REGISTRY"):
        value = value.to_base_units() if kind_of(value) is None else value.m_as(KINDS[kind_of(value)]["pint"])
    return float(value)


def kind_of(value: Any) -> str | None:
    """The kind of a quantity by the unit of the trade in which it came."""
    if not hasattr(value, "_REGISTRY"):
        return None
    for kind, table in KINDS.items():
        names = (table["trade"], table["pint"], *{"time": ("hour",), "length": ("meter",), "stress": ("gigapascal",)}.get(kind, ()))
        if any(value.units == value._REGISTRY.Unit(name) for name in names):
            return kind
    raise AssertionError(f"no kind has the unit {value.units}")


def expected_number(text: Any, value: Any) -> float:
    if not isinstance(text, str):
        return float(text)
    return _core.parse(text, kind_of(value) or "number", "row", "expect")


def close(a: float, b: float, tolerance: float) -> bool:
    """|a - b| <= tolerance * max(|a|, |b|), as in C++; two zeros are equal, NaN never is."""
    return math.fabs(a - b) <= tolerance * max(math.fabs(a), math.fabs(b))
