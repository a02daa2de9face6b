"""The error of an impossible input."""

from __future__ import annotations


class InputError(ValueError):
    """An input that cannot be: not finite, a negative length, a minimum above its maximum.

    The message names the function, the parameter, the value with its unit and the allowed range; in arrays the
    parameter carries the index of the first bad element.

    Attributes
    ----------
    function, parameter, value, allowed : str
        The parts of the message.
    """

    def __init__(self, function: str, parameter: str, value: str, allowed: str) -> None:
        super().__init__(function, parameter, value, allowed)
        self.function = function
        self.parameter = parameter
        self.value = value
        self.allowed = allowed

    def __str__(self) -> str:
        return f"{self.function}: {self.parameter} = {self.value}; allowed: {self.allowed}"
