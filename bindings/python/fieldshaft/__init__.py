"""Whether a tractor can run a PTO-driven implement through its whole working range.

The functions of this package take quantities of any pint registry or texts such as "75 hp" and return quantities.
Those of `fieldshaft.si` take and return plain SI numbers and arrays.
"""

import importlib as _importlib
from typing import Any as _Any

from fieldshaft._exported import FORMULAS as _FORMULAS

__version__ = "0.1.0"

#: Where the public names live. They are loaded when they are first asked for: `fieldshaft.si` needs none of them.
_HOMES = {
    "fieldshaft._advice": ("Change", "Changeover", "Remedies", "Remedy", "RemedyOptions", "changeover", "changeover_between", "remedies"),
    "fieldshaft._cases": ("Assessment", "Case", "Finding", "assess", "case_json_schema", "read_case", "read_case_file"),
    "fieldshaft._documents": ("CaseError", "CaseProblem"),
    "fieldshaft._envelopes": (
        "BranchEnvelopeOfCase",
        "MeasuredEntry",
        "RangeOrigin",
        "StateEnvelope",
        "StateExtreme",
        "TurnAtPitch",
    ),
    "fieldshaft._farms": ("Farm", "FarmStudy", "farm_json_schema", "read_farm", "read_farm_file", "screened_checks", "study_farm", "study_pair", "with_options"),
    "fieldshaft._reports": ("ReportedValue", "to_html", "to_json", "to_markdown", "to_text"),
    "fieldshaft._frames": ("to_frame",),
    "fieldshaft._formulas": _FORMULAS,
    "fieldshaft._quantity_cycles": (
        "Cycles",
        "close_residue",
        "count_closed_cycles",
        "count_cycles",
        "count_repeating_cycles",
        "history_damage",
        "miner_damage",
    ),
}
_HOME_OF = {name: home for home, names in _HOMES.items() for name in names}

__all__ = ["constants", "si", *_HOME_OF]


def __getattr__(name: str) -> _Any:
    if name in ("si", "plots"):  # plots needs matplotlib, so that no star brings it in
        return _importlib.import_module(f"fieldshaft.{name}")
    if name == "constants":
        globals()[name] = _importlib.import_module("fieldshaft._constants").Constants()
        return globals()[name]
    home = _HOME_OF.get(name)
    if home is None:
        raise AttributeError(f"module 'fieldshaft' has no attribute {name!r}")
    value = getattr(_importlib.import_module(home), name)
    globals()[name] = value
    return value


def __dir__() -> list[str]:
    return sorted([*globals(), *__all__])
