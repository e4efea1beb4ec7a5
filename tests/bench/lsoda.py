"""Case B of tests/reference/charge_runs.json, by SciPy's LSODA, for the stopwatch.

It is given another program's minutes to 80 % and to the end and its hottest winding,
and takes the loosest tolerance with which LSODA is no further from its own finest run.
Prints milliseconds of processor time of the best of five runs (preparation apart),
minutes to 80 %, the tolerance, and both errors as parts.
"""

import json
import math
import sys
import time
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[1] / "reference"))
from charge_runs import Boat


def run(tolerance):
    return boat.run(tolerance=tolerance, longest=math.inf)


def answers(tolerance):
    """Minutes to 80 % and to the end, and the hottest winding."""
    done = run(tolerance)
    to_80, _, to_end = (times[0] for times in done.t_events)
    times = np.linspace(0, to_end, 50_000)
    return np.array([to_80 / 60, to_end / 60, done.sol(times)[1].max()])


def error(found):
    """The largest part by which one of the answers is off."""
    return np.abs(found / finest - 1).max()


with open(sys.argv[1], encoding="utf-8") as file:
    boat = Boat(json.load(file)["B_115A_regulated_direct_warm_space"]["inputs"])
finest = answers(1e-11)
allowed = error(np.array([float(figure) for figure in sys.argv[2:5]]))
for tolerance in (1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8):
    if error(answers(tolerance)) <= allowed:
        break
best = math.inf
for _ in range(5):
    begin = time.process_time()
    run(tolerance)
    best = min(best, time.process_time() - begin)
print(f"{1000 * best:.3f} {answers(tolerance)[0]:.4f} {tolerance} {allowed} {error(answers(tolerance))}")
