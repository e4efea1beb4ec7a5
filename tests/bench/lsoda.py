"""Case B of tests/reference/charge_runs.json, by SciPy's LSODA, for the stopwatch.

Prints milliseconds of the best of five runs (preparation apart) and minutes to 80 %.
"""

import json
import math
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1] / "reference"))
from charge_runs import Boat

with open(sys.argv[1], encoding="utf-8") as file:
    P = json.load(file)["B_115A_regulated_direct_warm_space"]["inputs"]
boat = Boat(P)
best = math.inf
for _ in range(5):
    begin = time.perf_counter()
    run = boat.run(tolerance=1e-8, longest=600)
    best = min(best, time.perf_counter() - begin)
print(f"{1000 * best:.3f} {run.t_events[0][0] / 60:.4f}")
