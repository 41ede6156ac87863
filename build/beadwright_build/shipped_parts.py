"""What others wrote and comes inside Pyodide's files, which bring no license texts of their own.

Where each name and copyright line is from: the part's own license file or the head of its source;
for what is part of Python, Python's list of incorporated software.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

TEXTS = Path(__file__).parent / "licence_texts"
"""License texts word for word."""

LONG = ("python", "mpl-2.0", "apache-2.0")
"""Texts with a file of their own on the site; the others stand in the list itself."""

TURBO_COPYRIGHT = "Copyright © 2026 37signals LLC"
"""As the head of its script says; the package has no license file."""

_MIT, _MPL = "MIT", "MPL-2.0"


@dataclass(frozen=True, slots=True)
class Part:
    """A part of a file.

    Args:
        name: What it is called.
        licence: Its SPDX expression.
        copyright: Its copyright line; empty where there is none.
        text: Name of its license text; empty where none is asked for.
        mark: Bytes by which it is seen to be there.
    """

    name: str
    licence: str
    copyright: str
    text: str
    mark: bytes


PARTS: tuple[Part, ...] = (
    Part("CPython 3.13.2, with what it incorporates", "PSF-2.0",
         "Copyright (c) 2001 Python Software Foundation", "python", b"Py_GetCopyright"),
    Part("Hiwire", _MPL, "", "mpl-2.0", b"hiwire"),
    Part("Emscripten 4.0.9", _MIT, "Copyright (c) 2010-2014 Emscripten authors", "mit",
         b"emscripten"),
    Part("musl", _MIT, "Copyright © 2005-2012 Rich Felker", "mit", b"musl"),
    Part("compiler-rt, libc++ and libc++abi of LLVM", "Apache-2.0 WITH LLVM-exception",
         "", "apache-2.0", b"__cxa"),
    Part("dlmalloc", "CC0-1.0", "Doug Lea; given to the public domain", "", b"emscripten"),
    Part("MiniLZ4", _MIT, "Copyright (c) 2012 Pierre Curto", "mit", b"MiniLZ4"),
    Part("ErrorStackParser and StackFrame", _MIT,
         "Copyright (c) 2017 Eric Wendelin and other contributors", "mit", b"ErrorStackParser"),
    Part("zlib", "Zlib", "Copyright (C) 1995-2013 Jean-loup Gailly and Mark Adler", "zlib",
         b"inflate_copyright"),
    Part("bzip2", "bzip2-1.0.6", "Copyright (C) 1996-2010 Julian R Seward", "bzip2", b"libbzip2"),
    Part("libffi", _MIT, "Copyright (c) 1996-2021 Anthony Green, Red Hat, Inc and others", "mit",
         b"ffi_closure_alloc"),
    Part("Expat", _MIT,
         "Copyright (c) 1998-2000 Thai Open Source Software Center Ltd and Clark Cooper\n"
         "Copyright (c) 2001-2017 Expat maintainers", "mit", b"xml.parsers.expat"),
    Part("libmpdec", "BSD-2-Clause", "Copyright (c) 2008-2016 Stefan Krah. All rights reserved.",
         "bsd-2-clause", b"libmpdec"),
    Part("mimalloc", _MIT, "Copyright (c) 2018-2021 Microsoft Corporation, Daan Leijen", "mit",
         b"mimalloc"),
    Part("HACL*", _MIT, "Copyright (c) 2016-2022 INRIA, CMU and Microsoft Corporation\n"
         "Copyright (c) 2022-2023 HACL* Contributors", "mit", b"Hacl_Hash"),
)  # fmt: skip


def text(name: str) -> str:
    """Return a license text."""
    return (TEXTS / f"{name}.txt").read_text(encoding="utf-8").strip()


def long_texts() -> Iterator[tuple[str, str]]:
    """Yield file name and text of each long one."""
    for name in LONG:
        yield f"{name}.txt", text(name) + "\n"
