"""The yardstick: the same reckoning in vectorised numpy, on one thread, on the very numbers that the engine is given.

    yardstick.py time BASE...     reads BASE.json, BASE.first.i8, BASE.second.i8, BASE.share.f64; times and answers
    yardstick.py answer FILE      reads one JSON file with the cells inside; answers only

Prints one JSON object. The model is written down anew here, not taken from the engine: naive Bayes with an even prior; a
reading is wrong with the chance `misread`, and then any other state alike; what is unknown of a taxon is the mean of
what is known of the others. Expected information is Shannon's: entropy of the report less its mean entropy within taxa.
"""
import json, os, platform, sys, time

for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS", "BLIS_NUM_THREADS", "VECLIB_MAXIMUM_THREADS"):
    os.environ[name] = "1"
import numpy as np


def clock(work, seconds=0.4):
    """Least and median milliseconds of one run."""
    for _ in range(3):
        work()
    start = time.perf_counter(); work(); each = max(1, int(0.002 / (time.perf_counter() - start)))
    samples, end = [], time.perf_counter() + seconds
    while time.perf_counter() < end or len(samples) < 5:
        start = time.perf_counter()
        for _ in range(each):
            work()
        samples.append((time.perf_counter() - start) / each * 1e3)
    return {"best": min(samples), "median": float(np.median(samples))}


def copy_bandwidth():
    """Bytes read and written for each second, by the best of some copies of 128 MiB."""
    source = np.ones(128 << 20, np.uint8); target = np.empty_like(source)
    return 2 * source.nbytes / (clock(lambda: np.copyto(target, source), 1)["best"] / 1e3)


def read(path):
    made = json.load(open(path))
    if "first" not in made:
        base = path[: -len(".json")]
        made["first"] = np.fromfile(base + ".first.i8", np.int8)
        made["second"] = np.fromfile(base + ".second.i8", np.int8)
        made["share"] = np.fromfile(base + ".share.f64", np.float64)
    return made


def reports(made, kind):
    """P(report | taxon): one row for each state of each character, one column for each taxon; and each first row."""
    n, m, K = made["taxa"], made["characters"], made["states"]
    first, second, share = (np.asarray(made[k]).reshape(n, m) for k in ("first", "second", "share"))
    rows = np.concatenate([[0], np.cumsum(K)[:-1]]); P = np.empty((sum(K), n), kind)
    for j in range(m):
        d = np.zeros((K[j], n)); known = first[:, j] >= 0; two = second[:, j] >= 0
        d[first[known, j], np.where(known)[0]] = share[known, j]
        d[second[two, j], np.where(two)[0]] += 1 - share[two, j]
        d[:, ~known] = d[:, known].mean(1, keepdims=True)
        P[rows[j] : rows[j] + K[j]] = d * (1 - made["misread"]) + (1 - d) * made["misread"] / (K[j] - 1)
    return P, rows


def reckoning(made, kind):
    P, rows = reports(made, kind); n = P.shape[1]; L = np.log(P)
    within = -np.add.reduceat(P * L, rows)
    prior = np.full(n, -np.log(n), kind); asked = [rows[j] + a for j, a in zip(made["asked"], made["said"])]

    def posterior():
        lp = prior.copy()
        for row in asked:
            lp += L[row]
        lp -= lp.max(); p = np.exp(lp); p /= p.sum()
        return p

    def gains(p):
        q = P @ p
        return (-np.add.reduceat(q * np.log(q), rows) - within @ p) / np.log(2)

    return posterior, gains


def answer(made):
    posterior, gains = reckoning(made, np.float64); p = posterior(); bits = gains(p)
    asked = set(made["asked"])
    return {"p": p.tolist(), "bits": [float(bits[j]) for j in range(made["characters"]) if j not in asked]}


def times(made, kind):
    posterior, gains = reckoning(made, kind); p = posterior()
    return {"posterior": clock(posterior), "gains": clock(lambda: gains(p)), "both": clock(lambda: gains(posterior()))}


def blas():
    """Which library multiplies, where the system tells what is loaded."""
    try:
        loaded = {os.path.realpath(line.split()[-1]) for line in open("/proc/self/maps") if "/" in line}
    except OSError:
        return "unknown"
    names = [os.path.basename(path) for path in sorted(loaded)]
    found = [n for key in ("openblas", "mkl", "blis", "libblas") for n in names if key in n]
    return found[0] if found else ("unknown" if not os.path.exists("/proc/self/maps") else "numpy's own")


mode, paths = sys.argv[1], sys.argv[2:]
if mode == "answer":
    print(json.dumps(answer(read(paths[0]))))
else:
    print(json.dumps({
        "python": platform.python_version(), "numpy": np.__version__, "blas": blas(), "bandwidth": copy_bandwidth(),
        "sizes": [{"double": times(made, np.float64), "single": times(made, np.float32), **answer(made)}
                  for made in map(read, (p + ".json" for p in paths))],
    }))
