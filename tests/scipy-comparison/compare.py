#!/usr/bin/env python3
"""Compares the heat solver with SciPy's sparse BDF on the same through-hole problem, in one run on one machine.

The benchmark project prints the problem (mesh, blocks, watched cells) with its own answers and times at several tolerances. This
script builds the same finite-volume equations from that description, solves them with scipy.integrate.solve_ivp (BDF, sparse
Jacobian given), and compares

  - temperatures: within 1 % of the span (350 - 25 K) of each other;
  - speed at equal error: for each error that both reach against a reference of very tight tolerance, the ratio of the fastest of
    several times (the fastest is the least disturbed by whatever else the machine does).

Exit codes: 0 when the temperatures agree, 1 when they do not, 0 with a message when SciPy is absent (nothing to compare with). The
speed ratio is measured and printed, with a word when it is below the wanted one; a busy machine must not fail a build.
Usage: compare.py [path of the built benchmark program]   (built and run by 'dotnet run' when no path is given)
"""
import json
import math
import pathlib
import statistics
import subprocess
import sys
import time

try:
    import numpy
    import scipy.integrate
    import scipy.sparse
except ImportError:
    print("skipped: SciPy is not installed (Debian: apt-get install python3-scipy)")
    sys.exit(0)

SPAN_K = 325.0
LEAST_RATIO = 10.0
TOLERANCES = [1e-2, 3e-3, 1e-3, 3e-4, 1e-4, 1e-5, 1e-6]


def ours():
    if len(sys.argv) > 1:
        command = [sys.argv[1], "heat-comparison"]
    else:
        project = pathlib.Path(__file__).resolve().parents[1] / "ReworkThermal.Benchmarks"
        command = ["dotnet", "run", "--project", str(project), "-c", "Release", "--", "heat-comparison"]
    printed = subprocess.run(command, check=True, capture_output=True, text=True).stdout
    return json.loads([line for line in printed.splitlines() if line.startswith("{")][-1])


def faces(divisions):
    places = [0.0]
    for to, cells, ratio in divisions:
        cells = int(cells)
        total = cells if abs(ratio - 1) < 1e-9 else (ratio**cells - 1) / (ratio - 1)
        width = (to * 1e-3 - places[-1]) / total
        for _ in range(cells - 1):
            places.append(places[-1] + width)
            width *= ratio
        places.append(to * 1e-3)
    return numpy.array(places)


def build(problem):
    """C dT/dt = A T + b, cell (i, j) at i * nz + j."""
    rf, zf = faces(problem["radial"]), faces(problem["axial"])
    rc, zc = (rf[1:] + rf[:-1]) / 2, (zf[1:] + zf[:-1]) / 2
    nr, nz = len(rc), len(zc)
    kr, kz, heat, block = (numpy.zeros((nr, nz)) for _ in range(4))
    for number, (inner, outer, bottom, top, radial, axial, volumetric) in enumerate(problem["blocks"]):
        inside = ((rc > inner * 1e-3) & (rc < outer * 1e-3))[:, None] & ((zc > bottom * 1e-3) & (zc < top * 1e-3))[None, :]
        kr[inside], kz[inside], heat[inside], block[inside] = radial, axial, volumetric, number
    area = math.pi * (rf[1:] ** 2 - rf[:-1] ** 2)
    capacity = heat * area[:, None] * numpy.diff(zf)[None, :]
    rows, columns, values = [], [], []
    constant = numpy.zeros(nr * nz)
    at = lambda i, j: i * nz + j

    def join(a, b, conductance):
        rows.extend([a, a, b, b])
        columns.extend([a, b, b, a])
        values.extend([-conductance, conductance, -conductance, conductance])

    for j in range(nz):
        core = True
        for i in range(1, nr):
            core = core and block[i, j] == block[0, j]
            height = 2 * math.pi * (zf[j + 1] - zf[j])
            inner = (rf[i] - rc[i - 1]) / rf[i] if core else math.log(rf[i] / rc[i - 1])
            outer = (rc[i] - rf[i]) / rf[i] if core else math.log(rc[i] / rf[i])
            join(at(i - 1, j), at(i, j), 1 / (inner / (height * kr[i - 1, j]) + outer / (height * kr[i, j])))
    for i in range(nr):
        for j in range(nz - 1):
            lower = (zf[j + 1] - zf[j]) / 2 / (kz[i, j] * area[i])
            upper = (zf[j + 2] - zf[j + 1]) / 2 / (kz[i, j + 1] * area[i])
            join(at(i, j), at(i, j + 1), 1 / (lower + upper))
        for j, iron in ((nz - 1, rc[i] < 1e-3), (0, False)):
            film, gas = (2e4, 350.0) if iron else (10.0, 25.0)
            conductance = 1 / ((zf[j + 1] - zf[j]) / 2 / (kz[i, j] * area[i]) + 1 / (film * area[i]))
            rows.append(at(i, j))
            columns.append(at(i, j))
            values.append(-conductance)
            constant[at(i, j)] += conductance * gas
    matrix = scipy.sparse.csc_matrix((values, (rows, columns)), shape=(nr * nz, nr * nz))
    inverse = 1 / capacity.reshape(-1)
    matrix = scipy.sparse.csc_matrix(scipy.sparse.diags(inverse) @ matrix)
    watched = {name: at(i, j) for name, (i, j) in problem["watched"].items()}
    return matrix, inverse * constant, watched, rc, zc


def solve(problem, matrix, constant, tolerance):
    start = numpy.full(matrix.shape[0], 25.0)
    answer = scipy.integrate.solve_ivp(
        lambda _, kelvin: matrix @ kelvin + constant,
        (0.0, problem["seconds"]),
        start,
        method="BDF",
        jac=matrix,
        rtol=tolerance,
        atol=tolerance,
        t_eval=problem["times_s"],
    )
    if not answer.success:
        raise RuntimeError(answer.message)
    return answer.y


def main():
    problem = ours()
    matrix, constant, watched, rc, zc = build(problem)
    print(f"mesh {len(rc)} x {len(zc)}, {problem['seconds']:.0f} s bench time")
    reference = solve(problem, matrix, constant, 1e-10)

    theirs = []
    for tolerance in TOLERANCES:
        times = []
        for _ in range(10):
            begun = time.perf_counter()
            field = solve(problem, matrix, constant, tolerance)
            times.append((time.perf_counter() - begun) * 1e3)
        error = max(numpy.abs(field[cell] - reference[cell]).max() for cell in watched.values())
        theirs.append((error, min(times)))
        print(f"SciPy BDF  tolerance {tolerance:7.0e}: error {error:9.2e} K, {theirs[-1][1]:8.1f} ms")

    mine = []
    for run in problem["runs"]:
        errors = [numpy.abs(numpy.array(run["celsius"][name]) - reference[cell]).max() for name, cell in watched.items()]
        mine.append((max(errors), run["time_ms"]))
        print(f"ours       tolerance {run['tolerance_k']:5.3f} K: error {max(errors):9.2e} K, {run['time_ms']:8.1f} ms, {run['steps']} steps")
    finest = min(error for error, _ in mine)

    print(f"finest run differs from the reference by {finest:.4f} K = {100 * finest / SPAN_K:.4f} % of the span")
    ratios = []
    for error, milliseconds in mine:
        fastest = min((t for e, t in theirs if e <= error), default=None)
        if fastest is not None:
            ratios.append(fastest / milliseconds)
            print(f"  at an error of {error:9.2e} K or less: SciPy {fastest:8.1f} ms, ours {milliseconds:6.1f} ms, ratio {ratios[-1]:.0f}")
    agreed = finest <= 0.01 * SPAN_K
    fast = bool(ratios) and statistics.median(ratios) >= LEAST_RATIO
    print(f"temperatures {'agree' if agreed else 'DIFFER'}; median speed ratio at equal error {statistics.median(ratios) if ratios else 0:.0f} (wanted {LEAST_RATIO:.0f}{'' if fast else ': NOT REACHED in this run'})")
    return 0 if agreed else 1


if __name__ == "__main__":
    sys.exit(main())
