"""The figures of the library that are no result of a formula: guide values, limits, and tables of the trade."""

from __future__ import annotations

import inspect
from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

from fieldshaft import _core
from fieldshaft._frames import kinds_of, si_unit, table
from fieldshaft._records import Record, Sourced, fill, show

if TYPE_CHECKING:
    from fieldshaft._frames import DataFrame


class Figure(Record):
    """One number of a constant, with where it comes from.

    Attributes
    ----------
    name : str
        Where it stands, such as plain_joint_practice.working.low.
    value
        The number, quantity or name.
    unit : str
        Of the value; empty for a plain number.
    meaning : str
        What the constant is.
    source : str or None
        What to look up.
    standing : Standing or None
        How sure the value is.
    """

    __slots__ = ("name", "value", "unit", "meaning", "source", "standing")
    name: str
    value: Any
    unit: str
    meaning: str
    source: str | None
    standing: Any

    def __init__(self, name: str, value: Any, unit: str, meaning: str, source: str | None, standing: Any) -> None:
        fill(self, (name, value, unit, meaning, source, standing))


class Figures:
    """The constants of one layer. Each is an attribute; the whole iterates over their names."""

    _is_si = False
    _types: dict[str, str] = {}

    def _value(self, name: str) -> Any:
        """A constant; quantities are made anew, in the application registry of the moment."""
        import fieldshaft.si  # the classes of the records  # noqa: F401

        value = getattr(_core, f"{name}_constant")()
        if self._is_si:
            return value
        from fieldshaft import _formulas  # noqa: F401
        from fieldshaft._quantities import application_registry, needs_registry, writer

        kind = self._types[name]
        return writer(kind)(value, application_registry()) if needs_registry(kind) else value

    def summary(self, name: str) -> str:
        """What a constant is, in one sentence."""
        return inspect.getdoc(inspect.getattr_static(type(self), name)) or ""

    def figures(self) -> tuple[Figure, ...]:
        """Every number of every constant with its unit and source, one after the other."""
        return tuple(row for name in self for row in self._rows(name, getattr(self, name), self._types[name], None, name))

    def _rows(self, name: str, value: Any, kind: str, source: Any, path: str) -> Iterator[Figure]:
        if isinstance(value, Sourced):
            yield from self._rows(name, value.value, kind.partition("[")[2].removesuffix("]"), value.source, path)
        elif isinstance(value, tuple):
            for i, entry in enumerate(value):
                yield from self._rows(name, entry, kind.partition("[")[2].removesuffix("]"), source, f"{path}[{i}]")
        elif isinstance(value, Record) and type(value).__name__ != "Source":
            own = getattr(value, "source", source)
            for field, field_kind in zip(value._names(), kinds_of(value), strict=True):
                entry = getattr(value, field)
                if field != "source" and entry is not None:
                    yield from self._rows(name, entry, field_kind, own, f"{path}.{field}")
        else:
            yield self._figure(name, value, kind, source, path)

    def _figure(self, name: str, value: Any, kind: str, source: Any, path: str) -> Figure:
        if hasattr(value, "text") and hasattr(value, "standing"):  # a constant that is a source
            value, source = value.text, value
        unit = show(value).partition(" ")[2] if hasattr(value, "_REGISTRY") else si_unit(kind)
        text, standing = (source.text, source.standing) if source is not None else (None, None)
        return Figure(path, value, unit, self.summary(name), text, standing)

    def to_frame(self) -> DataFrame:
        """Every number as a row of a pandas data frame, with its unit, source and standing."""
        rows = [
            (f.name, getattr(f.value, "magnitude", f.value), f.unit, f.meaning, f.source, f.standing and str(f.standing))
            for f in self.figures()
        ]
        return table(rows, Figure._names())

    def __iter__(self) -> Iterator[str]:
        return iter(self._types)

    def __len__(self) -> int:
        return len(self._types)

    def __contains__(self, name: object) -> bool:
        return name in self._types

    def __getitem__(self, name: str) -> Any:
        if name not in self._types:
            raise KeyError(name)
        return getattr(self, name)

    def __eq__(self, other: object) -> bool:
        return type(other) is type(self)

    def __hash__(self) -> int:
        return hash(type(self))

    def __repr__(self) -> str:
        return f"<{len(self)} constants of fieldshaft{'.si' if self._is_si else ''}: {', '.join(list(self)[:4])}, ...>"

    def _repr_html_(self) -> str:
        from html import escape

        rows = "".join(
            f"<tr>{''.join(f'<td style=text-align:left>{escape(text)}</td>' for text in _cells(figure))}</tr>"
            for figure in self.figures()
        )
        head = "".join(f"<th>{text}</th>" for text in ("name", "value", "source", "standing"))
        return f"<table><tr>{head}</tr>{rows}</table>"


def _cells(figure: Figure) -> tuple[str, ...]:
    value = show(figure.value) if hasattr(figure.value, "_REGISTRY") else f"{show(figure.value)} {figure.unit}".strip()
    return figure.name, value, figure.source or "", str(figure.standing or "")

