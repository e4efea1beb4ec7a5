"""Three charging runs by SciPy's LSODA: an independent implementation of the
same equations as the program's.

    python3 tests/reference/charge_runs.py                 prints what the file says and what it finds
    python3 tests/reference/charge_runs.py --write         writes charge_runs.json afresh

Needs numpy and SciPy. Every parameter stands under "inputs" of its run; times in
minutes, temperatures in °C, amperes, volts, watts, charge as a share. They are
no measurements.
"""

import json
import math
import sys
from pathlib import Path

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq, fsolve

FILE = Path(__file__).with_name("charge_runs.json")
CHARGE = [0, 0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.98, 1]
REST_V = [2.6, 2.9, 3.05, 3.2, 3.24, 3.265, 3.285, 3.29, 3.3, 3.325, 3.33, 3.335, 3.34, 3.36, 3.45]
SERIES_MIN = 5


def ohms(temperature):
    return 1 + 0.00393 * (temperature - 20)


class Boat:
    def __init__(self, p):
        self.p = p
        self.n = p["rpm"] * p["ratio"]
        self.i_inf = p["I_rated"] / math.sqrt(1 - (p["n0"] / p["n_rated"]) ** 2)
        loss = p["V_ref"] * p["I_rated"] * (1 / p["eta_rated"] - 1)
        self.iron, self.wind = p["f_iron"] * loss, p["f_wind"] * loss
        copper = loss - self.iron - self.wind - 2 * p["Vd"] * p["I_rated"] - p["P_field"]
        self.copper20 = copper / (p["I_rated"] ** 2 * ohms(110))
        size = (p["I_rated"] * p["V_ref"] / p["P_size"]) ** p["x_size"]
        self.wa, self.ba, self.da = (size * p[name] for name in ("G_wa", "G_ba", "G_da"))
        self.wb, self.db = size * p["G_wb"], size * p["G_db"]
        self.cap = 99 * p["mass"], 405 * p["mass"], 45 * p["mass"] + 40
        self.ohm = p["RQ"] / p["Ah"] + p["R_harness"]
        vent = p["Vd_eng"] * p["rpm"] / 120 * p["eta_v"] * bool(p["comb_from_comp"])
        vent += (p["blower_m3h"] * p["blower_factor"] + p["leak_m3h"]) / 3600
        self.vent_m3h = 3600 * vent
        self.vent = vent * p["rho_air"] * p["cp"]
        self.start = p["T_amb"] if p["T_a0"] is None else p["T_a0"]
        self.g = brentq(lambda g: self.bench(g)[0] - p["Tw_th"], 0.2, 2, xtol=1e-10)

    def full(self, n, volts, rotor):
        """Full field at a shaft speed and voltage with a rotor this warm [A]."""
        p = self.p
        x = volts / p["V_ref"] * ohms(p["T_cold"]) / ohms(rotor)
        v = (volts + 2 * p["Vd"]) / (p["V_ref"] + 2 * p["Vd"])
        ratio = p["n0"] * x ** -p["s0"] * v / n
        return self.i_inf * x ** p["s"] * math.sqrt(max(0.0, 1 - ratio * ratio))

    def losses(self, amps, n, volts, tw, tb):
        """Copper, diodes, field, iron, fan and friction [W]."""
        p = self.p
        v = (volts + 2 * p["Vd"]) / (p["V_ref"] + 2 * p["Vd"])
        flux = (amps / self.i_inf) ** 2 + (p["n0"] * v / n) ** 2
        return (
            self.copper20 * ohms(tw) * amps * amps,
            2 * p["Vd"] * amps,
            p["P_field"] * flux ** (1 / p["s"]) * ohms(tb + p["rotor_K"]) / ohms(p["T_cold"]),
            self.iron * (n / 6000) ** 1.5 * flux,
            self.wind * (n / 6000) ** p["x_wind"],
        )

    def heat(self, tw, tb, td, inlet, loss, air):
        """Rates of winding, body and rectifier [K/s], and heat to the air [W]."""
        copper, diode, field, iron, wind = loss
        to_body, plate = self.wb * (tw - tb), self.db * (td - tb)
        given = [air * c * (t - inlet) for c, t in ((self.wa, tw), (self.ba, tb), (self.da, td))]
        return (
            (copper - to_body - given[0]) / self.cap[0],
            (iron + field + 0.3 * wind + to_body + plate - given[1]) / self.cap[1],
            (diode - plate - given[2]) / self.cap[2],
            sum(given) + 0.7 * wind,
        )

    def fan(self, n):
        still = self.p["still_air"]
        return still + (1 - still) * (n / self.p["n_th"]) ** self.p["m"]

    def bench(self, g):
        """Where it settles on the bench with its air conductances times g."""
        p = self.p

        def rates(t):
            amps = self.full(p["n_th"], p["V_ref"], t[1] + p["rotor_K"])
            loss = self.losses(amps, p["n_th"], p["V_ref"], t[0], t[1])
            return self.heat(*t, p["T_amb_th"], loss, g)[:3]

        return fsolve(rates, [150, 126, 115], xtol=1e-12)

    def flow(self, charge, tb):
        """Alternator and bank [A], volts at the alternator, and what holds it there."""
        p = self.p
        rest = p["ns"] * np.interp(charge, CHARGE, REST_V)
        field = min(1.0, max(0.0, (p["T_set"] + p["band"] / 2 - tb) / p["band"]))
        held = "temperature" if field < 1 else "alternator"
        most = min(p["I_cap"], (p["V_cv"] - rest) / self.ohm + p["I_load"])
        if p["I_dcdc"] is not None:
            volts = p["V_start"]
            gives = self.full(self.n, volts, tb + p["rotor_K"]) * field
            spare = max(0.0, gives - p["I_services"]) * p["eta_dcdc"] * volts
            # Out and the bank's volts under it, which rise together.
            out = min(p["I_dcdc"], most)
            held = "dc-dc" if p["I_dcdc"] <= most else "voltage"
            taken = out * (rest + (out - p["I_load"]) * self.ohm)
            if taken > spare:
                half = rest - p["I_load"] * self.ohm
                out = (math.sqrt(half * half + 4 * self.ohm * spare) - half) / (2 * self.ohm)
                taken, held = spare, "temperature" if field < 1 else "alternator"
            return taken / (p["eta_dcdc"] * volts) + p["I_services"], out - p["I_load"], volts, held
        volts = rest
        for _ in range(50):
            gives = self.full(self.n, volts, tb + p["rotor_K"]) * field
            amps = min(gives, most)
            before, volts = volts, rest + (amps - p["I_load"]) * self.ohm
            if abs(volts - before) < 1e-12:
                break
        return amps, amps - p["I_load"], volts, held if gives <= most else "voltage"

    def rate(self, seconds, state):
        p = self.p
        charge, tw, tb, td, air = state
        amps, bank, volts, _ = self.flow(charge, tb)
        loss = self.losses(amps, self.n, volts, tw, tb)
        inlet = air + p["recirc"] * (tb - air)
        *rates, given = self.heat(tw, tb, td, inlet, loss, self.g * self.fan(self.n))
        engine = p["T_eng"] + (self.start - p["T_eng"]) * math.exp(-seconds / p["tau_eng"])
        given += p["UA_eng"] * (engine - air) - p["UA_wall"] * (air - p["T_cabin"])
        given -= self.vent * (air - p["T_amb"])
        return [bank * p["eta_q"] / 3600 / p["Ah"], *rates, given / p["C_comp"]]

    def run(self, tolerance=1e-9, longest=60):
        """A run from soc0 to soc_end: states over time, and when it passed 80, 90 % and the end."""
        p = self.p
        events = [lambda _, y, to=to: y[0] - to for to in (0.8, 0.9, p["soc_end"])]
        events[2].terminal = True
        begin = [p["soc0"]] + [self.start] * 4
        options = {"rtol": tolerance, "atol": tolerance, "events": events, "max_step": longest}
        return solve_ivp(self.rate, (0, p["t_max"]), begin, method="LSODA", dense_output=True, **options)

    def moment(self, seconds, state):
        charge, tw, tb, td, air = state
        amps, bank, volts, held = self.flow(charge, tb)
        shaft = volts * amps + sum(self.losses(amps, self.n, volts, tw, tb))
        return {
            "t_min": seconds / 60, "soc": charge, "I_alt": amps, "I_bank": bank, "V": volts,
            "T_winding": tw, "T_body": tb, "T_rectifier": td, "T_air": air, "P_shaft_W": shaft,
            "limit": held,
        }


def solved(p):
    """Summary and series of a run."""
    boat = Boat(p)
    run = boat.run()
    end = run.t_events[2][0]
    fine = [boat.moment(t, run.sol(t)) for t in np.linspace(0, end, int(end) + 1)]
    column = {name: [moment[name] for moment in fine] for name in fine[0]}
    middle = boat.moment(end / 2, run.sol(end / 2))
    limits = column["limit"]
    summary = {
        "alt_rpm": boat.n,
        "T_cal_w_b_d": list(boat.bench(boat.g)),
        "I_inf": boat.i_inf,
        "R20_ohm": boat.copper20 * 6 / math.pi**2,
        "g_thermal": boat.g,
        "I_full_cold": boat.full(boat.n, p["V_ref"], p["T_cold"]),
        "I_start": column["I_alt"][0],
        "I_mid_hot": middle["I_alt"],
        "I_bank_mid": middle["I_bank"],
        "t_min_to_80": run.t_events[0][0] / 60,
        "t_min_to_90": run.t_events[1][0] / 60,
        "t_min_end": end / 60,
        "soc_end": p["soc_end"],
        "I_bank_mean": (p["soc_end"] - p["soc0"]) * p["Ah"] / p["eta_q"] / (end / 3600),
        "T_winding_max": max(column["T_winding"]),
        "T_body_max": max(column["T_body"]),
        "T_rect_max": max(column["T_rectifier"]),
        "T_air_end": column["T_air"][-1],
        "T_air_max": max(column["T_air"]),
        "P_shaft_max_W": max(column["P_shaft_W"]),
        "eff_mid": middle["V"] * middle["I_alt"] / middle["P_shaft_W"],
        "vent_m3h": boat.vent_m3h,
        "limit_share": {name: limits.count(name) / len(limits) for name in sorted(set(limits))},
    }
    times = np.arange(0, end, 60 * SERIES_MIN)
    moments = [boat.moment(t, run.sol(t)) for t in times]
    return summary, {name: [moment[name] for moment in moments] for name in moments[0]}


def rounded(value):
    """Seven digits, as the file has them."""
    if isinstance(value, dict):
        return {name: rounded(one) for name, one in value.items()}
    if isinstance(value, list):
        return [rounded(one) for one in value]
    return value if isinstance(value, str) else float(f"{value:.7g}")


def differences(before, now, name=""):
    """Name, figure before and figure now of all that differ."""
    if isinstance(now, dict):
        pairs = [(key, before.get(key, 0), now[key]) for key in now]
    elif isinstance(now, list):
        pairs = [(str(at), *pair) for at, pair in enumerate(zip(before, now))]
    elif before == now or isinstance(now, str):
        return []
    else:
        return [(name, before, now)]
    return [one for key, was, is_now in pairs for one in differences(was, is_now, f"{name}.{key}")]


def written(runs):
    """JSON with a line for each column."""
    def part(values):
        lines = [f"   {json.dumps(name)}: {json.dumps(value)}" for name, value in values.items()]
        return "{\n" + ",\n".join(lines) + "\n  }"

    def run(parts):
        return "{\n" + ",\n".join(f"  {json.dumps(n)}: {part(v)}" for n, v in parts.items()) + "\n }"

    return "{\n" + ",\n".join(f" {json.dumps(n)}: {run(v)}" for n, v in runs.items()) + "\n}\n"


def main():
    runs = json.loads(FILE.read_text(encoding="utf-8"))
    for name, run in runs.items():
        summary, series = (rounded(part) for part in solved(run["inputs"]))
        print(name)
        for what, before, now in differences(run["summary"], summary):
            print(f"  summary{what}: {before} in the file, {now}")
        worst = {}
        for what, before, now in differences(run["series"], series):
            column = what.split(".")[1]
            worst[column] = max(worst.get(column, 0), abs(before - now))
        for column, most in worst.items():
            print(f"  series.{column}: off by {most:.2g} at most")
        run["summary"], run["series"] = summary, series
    if "--write" in sys.argv[1:]:
        FILE.write_text(written(runs), encoding="utf-8")


if __name__ == "__main__":
    main()
