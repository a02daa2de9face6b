"""Pictures, one call each. They need matplotlib.

Every function takes quantities or texts as the functions of `fieldshaft` do, and returns the matplotlib figure. Lines
differ in dash as well as in colour, areas in hatch, so that they can be told apart in print and by colour-blind eyes.
"""

from fieldshaft._plot_dynamics import interference, simulation
from fieldshaft._plot_farm import farm_matrix
from fieldshaft._plot_geometry import envelope_map, joint_angles, turn_curve, views
from fieldshaft._plot_lines import speed_ripple, tip_speed
from fieldshaft._plot_strength import damage, duties, pto_torque, recommended_powers, stresses

__all__ = [
    "damage",
    "duties",
    "envelope_map",
    "farm_matrix",
    "interference",
    "joint_angles",
    "pto_torque",
    "recommended_powers",
    "simulation",
    "speed_ripple",
    "stresses",
    "tip_speed",
    "turn_curve",
    "views",
]
