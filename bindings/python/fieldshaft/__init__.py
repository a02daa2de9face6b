"""Whether a tractor can run a PTO-driven implement through its whole working range.

The functions of this package take quantities of any pint registry or texts such as "75 hp" and return quantities.
Those of `fieldshaft.si` take and return plain SI numbers and arrays.
"""

from fieldshaft import si
from fieldshaft._cases import *  # noqa: F403
from fieldshaft._cases import __all__ as _case_names
from fieldshaft._formulas import *  # noqa: F403
from fieldshaft._formulas import __all__ as _formula_names

from fieldshaft._quantity_cycles import *  # noqa: F403
from fieldshaft._quantity_cycles import __all__ as _cycle_names

__all__ = ["si", *_formula_names, *_cycle_names, *_case_names]
__version__ = "0.1.0"
