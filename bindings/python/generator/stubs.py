"""Writes the stubs."""

from descriptions import Library


def all_stubs(library: Library) -> dict[str, str]:
    return {}
