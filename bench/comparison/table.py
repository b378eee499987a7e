"""Checks that all three agree to 1e-8 (metres, redundancy numbers; logarithms of odds above 1 over their size) and prints times and ratios. usage: table.py FOLDER"""
import os, sys
import numpy as np

folder = sys.argv[1]
names = {"bay": "8 points in space, 36 readings", "frame": "60 points in space, 400 readings",
         "hall": "1,000 points, 6,000 readings", "plate": "plane of 1,000 points, minimum zone"}
read = lambda tool: {line.split()[0]: np.array([float(t) for t in line.split()[1:]]) for line in open(os.path.join(folder, f"times.{tool}.txt"))}
times = {tool: read(tool) for tool in ("engine", "scipy", "octave")}
print("Networks: places, all standard deviations, all redundancy numbers; of 8 and 60 points also the odds of every slip of every reading. SciPy and Octave on OpenBLAS. Times in ms: min / median / max. Ratio: of the medians, of the minima in brackets.")
print(f"{'':38}{'engine':>28}{'SciPy':>30}{'ratio':>14}{'Octave':>30}{'ratio':>14}{'largest difference':>21}")
failed = False
for name, title in names.items():
    answers = {t: np.atleast_1d(np.loadtxt(os.path.join(folder, f"{name}.{t}.txt"))) for t in times}
    worst = max(np.max(np.abs(answers[t] - answers["engine"]) / np.maximum(1, np.abs(answers["engine"]))) for t in ("scipy", "octave"))
    failed |= not worst <= 1e-8
    show = lambda t: f"{t.min():.2f} / {np.median(t):.2f} / {t.max():.2f}"
    ratio = lambda t: f"{np.median(times[t][name]) / np.median(times['engine'][name]):.1f} ({times[t][name].min() / times['engine'][name].min():.1f})"
    print(f"{title:38}{show(times['engine'][name]):>28}{show(times['scipy'][name]):>30}{ratio('scipy'):>14}{show(times['octave'][name]):>30}{ratio('octave'):>14}{worst:>21.1e}")
if failed:
    sys.exit("The answers do not agree to 1e-8 (metres, or redundancy numbers).")
