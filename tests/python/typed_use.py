"""How a typed program uses the package; checked, not run."""

from typing import Any

import fieldshaft
import numpy as np
import pint
from fieldshaft import plots, si

ureg: pint.UnitRegistry[float] = pint.UnitRegistry()
torque = fieldshaft.shaft_torque("75 hp", ureg.Quantity(540, "rpm"))
number: float = si.shaft_torque(50e3, 56.5)
many = si.shaft_torque(np.array([1.0, 2.0]), 3.0)
mean: float = float(many.mean())
tube = fieldshaft.TubeSection("50 mm", "44 mm")
stress = fieldshaft.torsion_stress(tube, torque)
print(stress.to("MPa"), tube.outer_diameter.m, fieldshaft.joint_bearing_life("20 kN", "40 mm", "400 N*m", "540 rpm", "15 deg"))
spline = fieldshaft.InvoluteSpline(21, "1.5875 mm", "30 deg", "2 in")
print(fieldshaft.spline_stress(spline, torque).root_torsion.to("MPa"))
assessment = fieldshaft.assess(fieldshaft.read_case("{}"))
for finding in assessment.findings:
    print(finding.id, finding.status is fieldshaft.Status.ok)

# Objects and answers.
case = fieldshaft.read_case_file("machine.toml")
found: fieldshaft.Remedies = fieldshaft.remedies(case, accept=fieldshaft.Status.caution, most_changes=3)
changed: fieldshaft.Case = found.sets[0].changed
steps: fieldshaft.Changeover | None = fieldshaft.changeover_between(case, changed)
worst: fieldshaft.Status = max(finding.status for finding in assessment.findings)
for use in fieldshaft.gear_uses(case):
    never: pint.Quantity[Any] | None = use.never_pass
    available = use.available
    if available is not None:
        print(use.gear, available.low.to("kW"))
plain_use: float | None = si.gear_uses(case)[0].set
economy = fieldshaft.economy_answer(case, fieldshaft.SeasonUse("300 h", fieldshaft.Money(1.2, "EUR")))
fits: fieldshaft.Status = economy.fits
for state in assessment.envelopes:
    proved: float = state.front_angle.bound.si
    print(state.state is fieldshaft.MachineState.turning, state.longest.matters_most, proved)
frame = assessment.to_frame()
statuses: list[str] = list(frame["status"])
branch_names: list[str] = [branch.name for branch in assessment.branches]
turns: list[float] = [point.left for point in assessment.turn_curve]
print(assessment.envelope_frame(), assessment.turn_frame(), fieldshaft.to_frame([tube, tube]), tube.to_json(), tube.to_frame())

farm = fieldshaft.read_farm_file("farm.toml")
study: fieldshaft.FarmStudy = fieldshaft.study_farm(farm, depth="screening", threads=2)
searched = fieldshaft.study_farm(farm, remedies=fieldshaft.RemedyOptions("ok", most_changes=2))
verdict: fieldshaft.Status = study.verdict("tractor A", 0)
print(study.matrix(), farm.to_frame("implements"), fieldshaft.study_pair(farm, 0, 0).verdict)

# Duty lists and histories.
work = [fieldshaft.Duty("800 N·m", "0 N·m", "2 Hz", "100 h")]
line = fieldshaft.TorqueSnLine("9 kN·m", -0.1, "2 kN·m", "12 kN·m", "10 kN·m")
life = fieldshaft.duty_life(work, line, "goodman")
cycles = fieldshaft.count_cycles(ureg.Quantity(np.array([1.0, 3.0, 2.0, 4.0]), "kN*m"))
damage = fieldshaft.miner_damage(cycles, line, fieldshaft.MeanStressRule.goodman)
figure = plots.duties(work, line, "goodman")
figure.savefig("duties.png")
speeds: tuple[fieldshaft.Sourced, ...] = fieldshaft.constants.nominal_pto_speeds
