"""The names of the formulas: each number says its unit, each function says where it is from."""

from __future__ import annotations

import ast
import re
from typing import TYPE_CHECKING, NamedTuple

import pytest

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

# Last words of a name that is a number with a unit; units over units are built from these.
UNITS = {
    *("m", "mm", "m2", "m3", "m4", "mm2", "in", "ft"),
    *("n", "kn", "nm", "pa", "mpa", "psi", "psf", "kg", "lb"),
    *("s", "min", "minutes", "h", "hours", "days", "weeks", "years"),
    *("deg", "rad", "c"),
}
# What may be counted, per unit.
COUNTED = {"lifts"}
# Last words that say of themselves that the number is pure.
PURE_WORDS = {"factor", "ratio", "coefficient", "share", "chance", "solidity"}
# Other pure numbers, by the name their standard or the trade gives them.
PURE_NAMES = {"gauge", "specific_gravity"}
# A range is of any unit: whoever holds one says which. So its module has none to say.
OF_ANY_UNIT = "mechanics/ranges.py"


class Number(NamedTuple):
    """A number with a name: an argument, a field, or what a function hands back."""

    where: str
    name: str


def has_unit(name: str) -> bool:
    """Tell whether a name ends in a unit, alone or per another; `_at` may follow it."""
    above, per, below = name.lower().removesuffix("_at").rpartition("_per_")
    if per:
        return below in UNITS and (above in COUNTED or has_unit(above))
    return below.rpartition("_")[2] in UNITS


def is_pure(name: str) -> bool:
    """Tell whether a name is known to be that of a number without a unit."""
    return name in PURE_NAMES or name.removesuffix("_at").rpartition("_")[2] in PURE_WORDS


def is_number(annotation: ast.expr | None) -> bool:
    """Tell whether an annotation speaks of floats, or of a range of them."""
    return annotation is not None and bool(re.search(r"\b(float|Range)\b", ast.unparse(annotation)))


def modules(root: Path) -> list[Path]:
    """Every module of the two rooms of formulas."""
    return sorted(
        p for room in ("mechanics", "sky") for p in (root / "plantframe" / room).glob("*.py")
    )


def numbers(module: Path) -> Iterator[Number]:
    """Every argument, field and function that a module shows and that is a float."""
    for node in ast.walk(ast.parse(module.read_text("utf-8"))):
        if not isinstance(node, ast.FunctionDef | ast.ClassDef) or node.name.startswith("_"):
            continue
        where = f"{module.parent.name}/{module.name}: {node.name}"
        if where.startswith(OF_ANY_UNIT):
            continue
        if isinstance(node, ast.ClassDef):
            fields = [line for line in node.body if isinstance(line, ast.AnnAssign)]
            named = [(ast.unparse(field.target), field.annotation) for field in fields]
        else:
            arguments = (*node.args.posonlyargs, *node.args.args, *node.args.kwonlyargs)
            named = [
                (argument.arg, argument.annotation) for argument in arguments if argument.annotation
            ]
            if is_number(node.returns):
                yield Number(where, node.name)
        for name, annotation in named:
            if is_number(annotation):
                yield Number(where, name)


def test_each_number_of_a_formula_ends_in_its_unit_or_is_listed_as_pure(root: Path) -> None:
    found = [number for module in modules(root) for number in numbers(module)]
    assert len(found) > 100
    nameless = {f"{n.where}: {n.name}" for n in found if not has_unit(n.name) | is_pure(n.name)}
    assert not nameless, "\n".join(sorted(nameless))


def test_the_lists_of_pure_numbers_hold_nothing_that_is_gone(root: Path) -> None:
    names = {number.name for module in modules(root) for number in numbers(module)}
    assert names >= PURE_NAMES
    assert {name.rpartition("_")[2] for name in names} >= PURE_WORDS


def test_each_public_formula_says_where_it_is_from(root: Path) -> None:
    silent = []
    for module in modules(root):
        if module.as_posix().endswith(OF_ANY_UNIT):
            continue
        for node in ast.parse(module.read_text("utf-8")).body:
            if isinstance(node, ast.FunctionDef) and not node.name.startswith("_"):
                said = ast.get_docstring(node) or ""
                if "Source" not in said and "estimate" not in said.lower():
                    silent.append(f"{module.parent.name}/{module.name}: {node.name}")
    assert not silent, "\n".join(silent)


@pytest.mark.parametrize(
    "name", ["span_m", "soil_pa_per_m", "load_kg_per_m", "uniform_n_per_m2", "speed_m_per_s"]
)
def test_a_name_with_a_unit_is_told(name: str) -> None:
    assert has_unit(name)


@pytest.mark.parametrize("name", ["span", "load_per_m", "speed_m_per", "strength"])
def test_a_name_without_a_unit_is_told(name: str) -> None:
    assert not has_unit(name)
