"""Random layouts of a trailed driveline, and its angles and length written anew with NumPy.

Nothing here comes from the library: the proved extremes are held against it.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Vector = NDArray[np.float64]


def rotation(yaw: float, pitch: float, roll: float) -> Vector:
    """Rz(yaw) Ry(pitch) Rx(roll): the implement turned against the tractor."""
    cy, sy, cp, sp, cr, sr = np.cos(yaw), np.sin(yaw), np.cos(pitch), np.sin(pitch), np.cos(roll), np.sin(roll)
    about_z = np.array([[cy, -sy, 0.0], [sy, cy, 0.0], [0.0, 0.0, 1.0]])
    about_y = np.array([[cp, 0.0, sp], [0.0, 1.0, 0.0], [-sp, 0.0, cp]])
    about_x = np.array([[1.0, 0.0, 0.0], [0.0, cr, -sr], [0.0, sr, cr]])
    return about_z @ about_y @ about_x


@dataclass(frozen=True)
class Layout:
    """Lengths in metres, half intervals in radians."""

    pin: tuple[float, float, float]
    input: tuple[float, float, float]
    front_joint: float
    rear_joint: float
    yaw: float
    pitch: float
    roll: float

    @property
    def bounds(self) -> list[tuple[float, float]]:
        return [(-half, half) for half in (self.yaw, self.pitch, self.roll)]

    def values(self, angles: Sequence[float]) -> dict[str, float]:
        turn = rotation(*angles)
        front = np.array([-self.front_joint, 0.0, 0.0])
        rear = np.array(self.pin) + turn @ (np.array(self.input) + np.array([self.rear_joint, 0.0, 0.0]))
        between = rear - front
        length = float(np.linalg.norm(between))
        front_angle = float(np.arccos(np.clip(-between[0] / length, -1.0, 1.0)))
        rear_angle = float(np.arccos(np.clip(-(between @ turn[:, 0]) / length, -1.0, 1.0)))
        return {
            "front_angle": front_angle,
            "rear_angle": rear_angle,
            "difference": abs(front_angle - rear_angle),
            "longest": length,
            "shortest": length,
        }

    def objective(self, extreme: str) -> Callable[[Sequence[float]], float]:
        """What an optimiser makes as small as it can."""
        sign = 1.0 if extreme == "shortest" else -1.0
        return lambda angles: sign * self.values(angles)[extreme]


def random_layouts(count: int, seed: int) -> list[Layout]:
    random = np.random.default_rng(seed)
    return [
        Layout(
            pin=(-random.uniform(0.35, 0.6), random.uniform(-0.1, 0.1), -random.uniform(0.15, 0.4)),
            input=(-random.uniform(0.3, 1.0), random.uniform(-0.1, 0.1), random.uniform(0.1, 0.5)),
            front_joint=random.uniform(0.05, 0.12),
            rear_joint=random.uniform(0.05, 0.12),
            yaw=np.radians(random.uniform(15.0, 75.0)),
            pitch=np.radians(random.uniform(3.0, 15.0)),
            roll=np.radians(random.uniform(3.0, 12.0)),
        )
        for _ in range(count)
    ]
