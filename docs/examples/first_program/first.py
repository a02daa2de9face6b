import sys

import fieldshaft

print(fieldshaft.shaft_torque("75 hp", "540 rpm").to("N*m"))
case = fieldshaft.read_case_file(sys.argv[1] if len(sys.argv) > 1 else "case.json")
assessment = fieldshaft.assess(case)
print(assessment.verdict)
print(assessment.to_text("us"))
