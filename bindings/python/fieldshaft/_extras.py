"""Packages that only parts of fieldshaft need."""

from __future__ import annotations

import importlib
from typing import Any

#: Which extra of the package brings a module.
EXTRAS = {"pint": "units", "pandas": "frames", "matplotlib.pyplot": "plots", "tqdm": "progress"}


def need(module: str, purpose: str) -> Any:
    """The module, or an ImportError that says what it is for and how to get it."""
    try:
        return importlib.import_module(module)
    except ImportError as error:
        name = module.partition(".")[0]
        raise ImportError(f"fieldshaft needs {name} for {purpose}: pip install 'fieldshaft[{EXTRAS[module]}]'") from error
