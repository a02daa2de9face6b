# Generated from the descriptions in bindings/python. Change those, not this file.
from typing import Any

def __getattr__(name: str) -> Any: ...
