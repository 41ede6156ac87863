"""``python -m tests.browser.fault_table``: every fault tried in Chromium, what survived, what not.

A line a fault: tests tried, survived (passed) and lost (failed). It ends with status 1 if one was
lost. A word leaves out all faults without it: ``… fault_table clock``.
"""

import argparse
import os
import subprocess
import sys
import tempfile
from pathlib import Path
from xml.etree import ElementTree

HERE = Path(__file__).parent
FAULTS = {
    "first install: each file lost, in each way": (
        "test_every_file.py::test_a_first_visit_that_loses_a_file_is_told_and_goes_on",
    ),
    "first install: cut, silent, left and resumed": ("test_resume.py",),
    "files given another type by the host": (
        "test_every_file.py::test_a_host_that_gives_a_file_another_type_is_lived_with",
        "test_every_file.py::test_a_service_worker_of_another_type_is_told",
    ),
    "all files cleared while the app runs": (
        "test_every_file.py::test_all_files_cleared_while_the_app_runs_come_back_with_signal",
        "test_every_file.py::test_all_files_cleared_without_signal_leave_the_open_page_working",
    ),
    "a stored file spoilt or cleared": (
        "test_every_file.py::test_a_stored_file_that_is_spoilt_or_cleared_is_mended",
        "test_repair.py",
    ),
    "store silent, losing files; one reason told": ("test_faults.py",),
    "two releases: mixed, half stored, half typed": ("test_update.py",),
    "two tabs": ("test_kept_tabs.py",),
    "phone full, storage refused, private mode": ("test_kept_faults.py", "test_without.py"),
    "writes killed in the middle": ("test_killed_writes.py",),
    "worker killed, hung, mistyped": ("test_engine.py",),
    "clock set back": ("test_every_file.py::test_a_clock_set_back_by_years_changes_nothing",),
    "a sub-path": ("test_folder.py",),
    "broken import files": ("test_kept_file.py",),
    "10,000 queries, 10,000 files, 2,000 edits": ("test_many_asked.py",),
}
"""Tests in this folder by the fault they try."""


def tried(tests: tuple[str, ...]) -> tuple[int, int]:
    """Run tests, those marked long too; return how many were tried and how many failed."""
    with tempfile.TemporaryDirectory() as folder:
        report = Path(folder) / "report.xml"
        command = [sys.executable, "-m", "pytest", "-q", "-m", "long or not long",
                   f"--junitxml={report}", *(str(HERE / test) for test in tests)]  # fmt: skip
        whole = {**os.environ, "BEADWRIGHT_ALL_FAULTS": "1"}
        subprocess.run(command, stdout=subprocess.DEVNULL, check=False, env=whole)
        suite = ElementTree.parse(report).getroot().find("testsuite")
    if suite is None or suite.get("tests") == "0":
        raise LookupError(f"no test in {', '.join(tests)}")
    lost = int(suite.get("failures", 0)) + int(suite.get("errors", 0))
    return int(suite.get("tests", 0)), lost


def main() -> int:
    """Run and print; return 1 if anything was lost."""
    parser = argparse.ArgumentParser(description="Faults tried, survived, lost.")
    parser.add_argument("word", nargs="?", default="", help="only faults with this word")
    word = parser.parse_args().word
    all_lost = 0
    print(f"{'fault':<48}{'tried':>7}{'survived':>10}{'lost':>6}")
    for fault, tests in FAULTS.items():
        if word not in fault:
            continue
        count, lost = tried(tests)
        all_lost += lost
        print(f"{fault:<48}{count:>7}{count - lost:>10}{lost:>6}", flush=True)
    return min(1, all_lost)


if __name__ == "__main__":
    sys.exit(main())
