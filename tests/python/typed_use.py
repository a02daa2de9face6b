"""How a typed program uses the package; checked, not run."""

import fieldshaft
import numpy as np
import pint
from fieldshaft import si

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
