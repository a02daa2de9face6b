"""Bad input, for every formula from one list: the right answer or a clear error that names function and parameter."""

from __future__ import annotations

import contextlib
import doctest
import inspect
import io
from typing import Any

import numpy as np
import pint
import pytest
import rows

import fieldshaft
from fieldshaft import si
from fieldshaft._kinds import KINDS
from fieldshaft._quantities import Caller
from fieldshaft._records import Record

registry = pint.UnitRegistry()
other_registry = pint.UnitRegistry()  # made once: to make one takes long


def _formulas() -> list[str]:
    """Every formula of the package that is described, not written by hand."""
    functions = [n for n in fieldshaft.__all__ if inspect.isfunction(getattr(fieldshaft, n))]
    return sorted(name for name in functions if rows.caller(name) is not None)


def _examples() -> dict[str, dict[str, Any]]:
    """For each formula the arguments of its first reference row, else those of the example in its docstring."""
    found: dict[str, dict[str, Any]] = {}
    for row in rows.all_rows():
        name = row["formula"]
        if name not in found and rows.caller(name) is not None:
            found[name] = rows.arguments(name, row["given"])
    for name in _formulas():
        if name not in found:
            found[name] = _arguments_of_example(name)
    return found


def _arguments_of_example(name: str) -> dict[str, Any]:
    """What the docstring's example hands to its formula, caught on the way."""
    caught: list[dict[str, Any]] = []
    call = Caller.__call__

    def listen(caller: Caller, *arguments: Any) -> Any:
        if caller.name == name:
            caught.append(dict(zip((n for n, _ in caller.parameters), arguments, strict=True)))
        return call(caller, *arguments)

    document = doctest.DocTestParser().get_doctest(inspect.getdoc(getattr(fieldshaft, name)), {}, name, None, 0)
    Caller.__call__ = listen  # type: ignore[method-assign]
    try:
        with contextlib.redirect_stdout(io.StringIO()):
            for example in document.examples:
                exec(compile(example.source, name, "single"), document.globs)  # noqa: S102
    finally:
        Caller.__call__ = call  # type: ignore[method-assign]
    return caught[0]


EXAMPLES = _examples()


def _kinds(name: str) -> dict[str, str]:
    return {parameter: kind.partition("@")[0] for parameter, kind in rows.caller(name).parameters}


QUANTITIES = [
    (name, parameter)
    for name, given in EXAMPLES.items()
    for parameter, kind in _kinds(name).items()
    if kind in KINDS and parameter in given
]


def _si_arguments(name: str) -> dict[str, Any]:
    """The same arguments as plain SI numbers and records."""
    from fieldshaft._quantities import Context, reader

    context = Context(name)
    kinds = dict(rows.caller(name).parameters)
    return {p: reader(kinds[p])(value, context, p) for p, value in EXAMPLES[name].items()}


def _broadcasts(name: str, parameter: str) -> bool:
    """Whether a formula takes arrays: a list of two equal numbers is answered, not refused."""
    given = _si_arguments(name)
    try:
        getattr(si, name)(**{**given, parameter: np.array([given[parameter]] * 2)})
    except TypeError:
        return False
    return True


ARRAYS = [(name, parameter) for name, parameter in QUANTITIES if _broadcasts(name, parameter)]


#: Parameters that take objects, choices, lists, flags or texts.
OBJECTS = [
    (name, parameter)
    for name, given in EXAMPLES.items()
    for parameter, kind in _kinds(name).items()
    if kind not in KINDS and kind not in ("number", "count") and parameter in given
]


def test_list_is_complete() -> None:
    assert list(EXAMPLES) and sorted(EXAMPLES) == _formulas()
    assert len(QUANTITIES) > 400
    assert len(ARRAYS) > 250
    assert len(OBJECTS) > 150


@pytest.mark.parametrize(("name", "parameter"), QUANTITIES)
def test_bare_number(name: str, parameter: str) -> None:
    with pytest.raises(TypeError, match=rf"{name}: {parameter} = 5 has no unit; expected .* in units of"):
        getattr(fieldshaft, name)(**{**EXAMPLES[name], parameter: 5})


@pytest.mark.parametrize(("name", "parameter"), QUANTITIES)
def test_wrong_dimension(name: str, parameter: str) -> None:
    kind = _kinds(name)[parameter]
    other = "3 kg" if kind != "mass" else "3 m"
    for wrong in (other, registry(other), registry.Quantity(np.array([1.0, 2.0]), registry(other).units)):
        with pytest.raises(TypeError, match=rf"{name}: {parameter}"):
            getattr(fieldshaft, name)(**{**EXAMPLES[name], parameter: wrong})


@pytest.mark.parametrize(("name", "parameter"), QUANTITIES)
def test_text_that_is_none(name: str, parameter: str) -> None:
    with pytest.raises(fieldshaft.InputError, match=rf"{name}: {parameter}"):
        getattr(fieldshaft, name)(**{**EXAMPLES[name], parameter: "much"})


@pytest.mark.parametrize(("name", "parameter"), QUANTITIES)
def test_not_a_number(name: str, parameter: str) -> None:
    for bad in (float("nan"), float("inf")):
        if name in ("life_class", "damage_life") and bad == float("inf"):
            continue  # an endless life, and a damage that is infinite, are answers
        with pytest.raises(fieldshaft.InputError) as caught:
            getattr(si, name)(**{**_si_arguments(name), parameter: bad})
        assert caught.value.args[0] and caught.value.parameter


@pytest.mark.parametrize(("name", "parameter"), QUANTITIES)
def test_si_refuses_quantities_and_texts(name: str, parameter: str) -> None:
    given = _si_arguments(name)
    unit = KINDS[_kinds(name)[parameter]]["pint"]
    for wrong in (registry.Quantity(1.0, unit), "5 kW", True, None):
        with pytest.raises(TypeError, match=parameter):
            getattr(si, name)(**{**given, parameter: wrong})


@pytest.mark.parametrize(("name", "parameter"), ARRAYS)
def test_arrays(name: str, parameter: str) -> None:
    given = _si_arguments(name)
    function = getattr(si, name)
    value = given[parameter]
    alone = function(**given)

    def same(result: Any, shape: tuple[int, ...]) -> None:
        for one, many in zip(_leaves(alone), _leaves(result), strict=True):
            assert many.shape == shape
            if many.size and one is not None:
                assert np.all(many == one)

    same(function(**{**given, parameter: np.full(6, value)[::2]}), (3,))  # not contiguous
    same(function(**{**given, parameter: np.full((2, 3), value).T}), (3, 2))  # columns first
    same(function(**{**given, parameter: np.broadcast_to(value, (2, 2))}), (2, 2))  # no memory of its own
    same(function(**{**given, parameter: np.array([value], dtype=">f8")}), (1,))  # bytes the other way round
    same(function(**{**given, parameter: np.array([])}), (0,))
    assert not isinstance(function(**{**given, parameter: np.array(value)}), np.ndarray)  # no axes: a scalar
    if float(value).is_integer():
        same(function(**{**given, parameter: np.array([int(value)] * 2)}), (2,))


@pytest.mark.parametrize(("name", "parameter"), ARRAYS)
def test_arrays_of_quantities(name: str, parameter: str) -> None:
    given = _si_arguments(name)
    kinds = _kinds(name)
    unit, value = KINDS[kinds[parameter]]["pint"], given[parameter]
    own = {
        p: registry.Quantity(v, KINDS[kinds[p]]["pint"]) if kinds[p] in KINDS else v for p, v in given.items() if p != parameter
    }  # everything in one registry: objects in plain numbers belong to none
    function = getattr(fieldshaft, name)
    many = registry.Quantity(np.full(6, value)[::2], unit)
    assert {leaf.shape for leaf in _leaves(function(**own, **{parameter: many}))} == {(3,)}
    assert {leaf.shape for leaf in _leaves(function(**own, **{parameter: registry.Quantity(np.array([]), unit)}))} == {(0,)}
    for wrong in (np.ma.masked_array([value, value], mask=[False, True]), np.array([value, None], dtype=object)):
        with pytest.raises(TypeError, match=rf"{name}: {parameter}"):
            function(**own, **{parameter: registry.Quantity(wrong, unit)})


@pytest.mark.parametrize(("name", "parameter"), OBJECTS)
def test_objects_that_are_none(name: str, parameter: str) -> None:
    given = _si_arguments(name)
    for layer, arguments in ((fieldshaft, EXAMPLES[name]), (si, given)):
        for wrong in (object(), 5 + 2j, b"steel"):
            with pytest.raises(TypeError, match=rf"{name}: {parameter}"):
                getattr(layer, name)(**{**arguments, parameter: wrong})


# What is written by hand. -----------------------------------------------------------------------------------------

#: Functions of whole histories: the parameter that takes one, and the others, in units of the line.
LINE = si.TorqueSnLine(9e3, -0.1, 2e3, 12e3, 10e3)
HISTORIES: dict[str, tuple[str, dict[str, Any]]] = {
    "close_residue": ("residue", {}),
    "count_closed_cycles": ("history", {}),
    "count_cycles": ("history", {}),
    "count_repeating_cycles": ("history", {}),
    "history_damage": ("history", {"line": LINE, "rule": "goodman"}),
    "miner_damage": ("cycles", {"line": LINE, "rule": "goodman"}),
}
CYCLE_ROWS = np.array([[4000.0, 100.0, 20.0], [6000.0, -300.0, 5.0]])
SAMPLES = np.array([-2000.0, 1000.0, -3000.0, 5000.0, -1000.0, 3000.0, -4000.0, 4000.0, -2000.0])


def _objects_by_hand() -> dict[str, dict[str, Any]]:
    """For each other function by hand arguments that it takes."""
    rest = {"implement": {"name": "cutter"}, "driveline": {}}
    case = fieldshaft.read_case({"schema": "fieldshaft-case/1", "tractor": {"name": "tractor"}, **rest})
    machines = {"tractors": [{"name": "tractor"}], "implements": [{"name": "cutter", "hitch": "drawbar"}]}
    farm = fieldshaft.read_farm({"schema": "fieldshaft-farm/1", "title": "farm", **machines})
    report = {"report": fieldshaft.assess(case), "units": "us"}
    return {
        "assess": {"case": case},
        "case_json_schema": {},
        "changeover": {"arrangement": "reversible", "from_": (1, "540 rpm"), "to": (2, "1000 rpm"), "hitch": "drawbar"},
        "changeover_between": {"before": case, "after": case},
        "farm_json_schema": {},
        "read_case": {"text": case.to_json()},
        "read_case_file": {"path": "case.json"},
        "read_farm": {"text": farm.to_json()},
        "read_farm_file": {"path": "farm.json"},
        "remedies": {"case": case, "accept": "ok", "most_changes": 1, "beyond_smallest": 0, "most_sets": 1, "most_cases": 1,
                     "most_ranges": 1, "least_need": 0.5},
        "screened_checks": {},
        "study_farm": {"farm": farm, "depth": "screening", "remedies": False, "threads": 1},
        "study_pair": {"farm": farm, "tractor": "tractor", "implement": 0},
        "to_frame": {"items": [case]},
        **{f"to_{form}": report for form in ("html", "json", "markdown", "text")},
        "with_options": {"farm": farm, "options": []},
    }  # fmt: skip


BY_HAND = _objects_by_hand()


def test_no_function_is_left_out() -> None:
    public = {n for n in fieldshaft.__all__ if inspect.isfunction(getattr(fieldshaft, n))}
    assert public == {*EXAMPLES, *BY_HAND, *HISTORIES}
    for name, given in BY_HAND.items():
        function = getattr(fieldshaft, name)
        assert set(inspect.signature(function).parameters) == set(given), name
        if not name.endswith("_file"):
            function(**given)


@pytest.mark.parametrize(("name", "parameter"), [(name, parameter) for name, given in BY_HAND.items() for parameter in given])
def test_objects_by_hand_that_are_none(name: str, parameter: str) -> None:
    for wrong in (object(), 5 + 2j, b"steel", np.array([1.0, 2.0])):
        with pytest.raises((TypeError, fieldshaft.InputError), match=rf"{name}: {parameter}\b"):
            getattr(fieldshaft, name)(**{**BY_HAND[name], parameter: wrong})


@pytest.mark.parametrize("name", HISTORIES)
def test_arrays_by_hand(name: str) -> None:
    parameter, others = HISTORIES[name]
    good = CYCLE_ROWS if parameter == "cycles" else SAMPLES
    function = getattr(si, name)

    def answer(values: Any) -> list[Any]:
        result = function(**{parameter: values, **others})
        return [np.asarray(part).tolist() for part in (result if isinstance(result, tuple) else _leaves(result)[:1])]

    expected = answer(good)
    twice = np.repeat(good, 2, axis=0)[::2]
    for same in (good.tolist(), twice, good.astype(int), np.asfortranarray(good), good.astype(">f8")):
        assert answer(same) == expected
    assert all(not np.any(part) for part in answer(good[:0]))
    bad = good.copy()
    bad[1] = np.nan
    with pytest.raises(fieldshaft.InputError, match=rf"{name}: {parameter}\[1"):
        answer(bad)
    mask = np.zeros(good.shape, bool)
    for wrong in (
        np.ma.masked_array(good, mask=mask), good.astype(object), good.astype(complex), good.astype(bool), good.astype(str),
        good[..., None], 5.0, "5 kN", None, registry.Quantity(good, "N*m"),
    ):  # fmt: skip
        with pytest.raises(TypeError, match=rf"{name}: {parameter}"):
            answer(wrong)


@pytest.mark.parametrize("name", HISTORIES)
def test_quantities_by_hand(name: str) -> None:
    parameter, others = HISTORIES[name]
    function = getattr(fieldshaft, name)

    def cycles(values: Any, unit: Any = "N*m", where: Any = registry) -> Any:
        if parameter != "cycles":
            return where.Quantity(values, unit)
        rows = np.asarray(values)
        return fieldshaft.Cycles(where.Quantity(rows[:, 0], unit), where.Quantity(rows[:, 1], unit), rows[:, 2])

    good = CYCLE_ROWS if parameter == "cycles" else SAMPLES
    spread = np.repeat(good, 2, axis=0)[::2]
    for one, other in zip(*(_parts(function(cycles(values), **others)) for values in (good, spread)), strict=True):
        assert np.all(one == other)
    if others:  # the line says which dimension is due, and in which registry
        with pytest.raises(TypeError, match=f"{name}: {parameter}"):
            function(cycles(good, "MPa"), **others)
        own = fieldshaft.TorqueSnLine(other_registry.Quantity(9e3, "N*m"), -0.1, "2 kN*m", "12 kN*m", "10 kN*m")
        with pytest.raises(TypeError, match="different pint registries"):
            function(cycles(good), **{**others, "line": own})
    for wrong in (np.ma.masked_array(good, mask=np.zeros(good.shape, bool)), good.astype(object)):
        with pytest.raises(TypeError, match=f"{name}: {parameter}"):
            function(_masked_cycles(wrong) if parameter == "cycles" else cycles(wrong), **others)


def _masked_cycles(rows: Any) -> Any:
    """Cycles whose counts know more, or less, than numbers do."""
    return fieldshaft.Cycles(registry.Quantity(CYCLE_ROWS[:, 0], "N*m"), registry.Quantity(CYCLE_ROWS[:, 1], "N*m"), rows[:, 2])


def _parts(result: Any) -> list[Any]:
    return [leaf for part in (result if isinstance(result, tuple) else (result,)) for leaf in _leaves(part)]


def _leaves(result: Any) -> list[Any]:
    if isinstance(result, Record):
        return [leaf for value in result._values() for leaf in _leaves(value)]
    return [result]


@pytest.mark.parametrize(("name", "parameter"), ARRAYS)
def test_arrays_that_are_refused(name: str, parameter: str) -> None:
    given = _si_arguments(name)
    value = given[parameter]
    for wrong in (
        np.ma.masked_array([value, value], mask=[False, True]),
        np.array([value, None], dtype=object),
        np.array([True, False]),
        np.array([1j]),
        np.array(["1"]),
        [value, "1"],
    ):
        with pytest.raises(TypeError, match=rf"{name}: {parameter}"):
            getattr(si, name)(**{**given, parameter: wrong})


@pytest.mark.parametrize(("name", "parameter"), ARRAYS)
def test_first_bad_element_is_named(name: str, parameter: str) -> None:
    given = _si_arguments(name)
    values = np.full((2, 3), given[parameter])
    values[1, 1] = np.nan
    with pytest.raises(fieldshaft.InputError, match=r"\[1, 1\]|\(element \[1, 1\]\)"):
        getattr(si, name)(**{**given, parameter: values})


def _two_numbers() -> list[str]:
    return [n for n in EXAMPLES if sum(1 for a, _ in ARRAYS if a == n) >= 2]


@pytest.mark.parametrize("name", _two_numbers())
def test_shapes(name: str) -> None:
    given = _si_arguments(name)
    first, second = [p for n, p in ARRAYS if n == name][:2]
    with pytest.raises(ValueError, match=rf"{name}: shapes do not broadcast: .*{first} \(3,\).*{second} \(4,\)"):
        getattr(si, name)(**{**given, first: np.full(3, given[first]), second: np.full(4, given[second])})
    crossed = getattr(si, name)(**{**given, first: np.full((3, 1), given[first]), second: np.full(4, given[second])})
    assert all(leaf.shape == (3, 4) for leaf in _leaves(crossed))


@pytest.mark.parametrize("name", _two_numbers())
def test_mixed_registries(name: str) -> None:
    parameters = [p for n, p in QUANTITIES if n == name][:2]
    given = _si_arguments(name)
    mixed = {
        p: r.Quantity(given[p], KINDS[_kinds(name)[p]]["pint"]) for p, r in zip(parameters, (registry, other_registry), strict=True)
    }
    with pytest.raises(TypeError, match="different pint registries"):
        getattr(fieldshaft, name)(**{**EXAMPLES[name], **mixed})


@pytest.mark.parametrize("unit", ["hertz", "1 / second", "1 / minute", "counts_per_second"])
def test_frequency_is_no_shaft_speed(unit: str) -> None:
    with pytest.raises(TypeError, match=r"shaft_torque: speed is given in .*a frequency does not say turns or radians"):
        fieldshaft.shaft_torque("50 kW", registry.Quantity(9.0, unit))


@pytest.mark.parametrize("text", ["9 Hz"])
def test_frequency_as_text(text: str) -> None:
    with pytest.raises(TypeError, match="shaft_torque: speed.*frequency"):
        fieldshaft.shaft_torque("50 kW", text)


@pytest.mark.parametrize("unit", ["joule", "kilojoule", "kilowatt_hour", "watt * second", "Btu"])
def test_energy_is_no_torque(unit: str) -> None:
    with pytest.raises(TypeError, match=r"shaft_power: torque is given in .*an energy is no torque"):
        fieldshaft.shaft_power(registry.Quantity(900.0, unit), "540 rpm")
    with pytest.raises(TypeError, match="shaft_power: torque.*energy"):
        fieldshaft.shaft_power("900 J", "540 rpm")


@pytest.mark.parametrize("unit", ["newton * meter", "force_pound * foot", "kilowatt / rpm", "joule / radian", "foot_pound"])
def test_torques(unit: str) -> None:
    torque = registry.Quantity(1.0, unit)
    power = fieldshaft.shaft_power(torque, registry.Quantity(1.0, "radian / second"))
    assert power.m_as("watt") == pytest.approx(torque.m_as("newton * meter"), rel=1e-14)


@pytest.mark.parametrize("unit", ["dimensionless", "percent"])
def test_plain_number_is_no_angle(unit: str) -> None:
    with pytest.raises(TypeError, match=r"joint_speed_ratio: angle is given in"):
        fieldshaft.joint_speed_ratio(registry.Quantity(0.3, unit), "0 deg")


def test_angle_is_no_plain_number() -> None:
    with pytest.raises(TypeError, match=r"geared_speed: ratio is given in degree"):
        fieldshaft.geared_speed("540 rpm", registry.Quantity(1.5, "degree"))


def test_plain_numbers_with_a_unit_of_one() -> None:
    assert fieldshaft.geared_speed("540 rpm", registry.Quantity(150, "percent")).m == pytest.approx(810)
    assert fieldshaft.geared_speed("540 rpm", "150 %").m == pytest.approx(810)


def test_thermometer_is_no_difference() -> None:
    assert fieldshaft.temperature_factor("100 K").value == fieldshaft.temperature_factor(registry.Quantity(100, "delta_degC")).value
    with pytest.raises(TypeError, match="a difference, not a reading"):
        fieldshaft.temperature_factor(registry.Quantity(100, "degC"))


@pytest.mark.parametrize("number", [2, 2.0, np.int32(2), np.float32(2), np.array(2)])
def test_whole_numbers(number: Any) -> None:
    assert si.spline_step(number) == np.pi


@pytest.mark.parametrize("number", [2.5, float("nan"), 1e10])
def test_broken_counts(number: float) -> None:
    with pytest.raises(si.InputError, match="spline_step: positions"):
        si.spline_step(number)


def test_names_of_choices() -> None:
    for name in ("asme_elliptic", "asme elliptic", "asme-elliptic", si.MeanStressRule.asme_elliptic):
        assert si.uses_yield(name) is True
    with pytest.raises(si.InputError, match="uses_yield: rule = 'ellipse'; allowed: one of: goodman, gerber"):
        si.uses_yield("ellipse")
    with pytest.raises(TypeError, match="uses_yield: rule = 3"):
        si.uses_yield(3)


def test_wrong_objects() -> None:
    with pytest.raises(TypeError, match="torsion_stress: section = 'tube'.*expected SolidSection or TubeSection"):
        fieldshaft.torsion_stress("tube", "5 N*m")
    with pytest.raises(TypeError, match="torsion_stress: section = 5"):
        si.torsion_stress(5, 5.0)
    with pytest.raises(TypeError):
        si.torsion_stress(fieldshaft.SolidSection("40 mm"), 5.0)
    assert fieldshaft.torsion_stress(si.SolidSection(0.04), "5 N*m") == fieldshaft.torsion_stress(
        fieldshaft.SolidSection("40 mm"), "5 N*m"
    )


@pytest.mark.parametrize("layer", [fieldshaft, si])
def test_every_formula_takes_keywords(layer: Any) -> None:
    for name in layer.__all__:
        item = getattr(layer, name)
        if inspect.isfunction(item):
            kinds = {p.kind for p in inspect.signature(item).parameters.values()}
            assert kinds <= {inspect.Parameter.POSITIONAL_OR_KEYWORD}, name


def test_input_error() -> None:
    import pickle

    with pytest.raises(ValueError) as caught:
        si.shaft_torque(1.0, [1.0, -2.0])
    error = caught.value
    assert isinstance(error, fieldshaft.InputError)
    assert (error.function, error.parameter) == ("shaft_torque", "speed[1]")
    assert str(error) == "shaft_torque: speed[1] = -2 rad/s; allowed: a finite number above 0 rad/s"
    again = pickle.loads(pickle.dumps(error))
    assert type(again) is type(error) and str(again) == str(error)
