"""Sums in an entry: a short line of arithmetic over the frame's own facts.

Read with Python's own parser against a list of what is allowed, never run as code:
figures, the entry's names (one dot at most), + - * / and unary minus, comparison,
if-else, and / or / not, ceil, floor, min, max, pi and a few functions of geometry.
A word in quotes may only be compared: bar.joint == 'halved'.
"""

from __future__ import annotations

import ast
import math
import operator
from functools import lru_cache
from typing import TYPE_CHECKING, Final

from plantframe.catalogue.mistakes import ExpressionError, MissingFact
from plantframe.mechanics import geometry

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

LONGEST: Final = 200  # characters; a longer sum belongs in two named ones
SAID: Final = "said."  # said.bar is true where the plan has a line for the bar

Value = float | bool | str

_ARITHMETIC: Final[dict[type[ast.operator], Callable[[float, float], float]]] = {
    ast.Add: operator.add,
    ast.Sub: operator.sub,
    ast.Mult: operator.mul,
    ast.Div: operator.truediv,
}
_COMPARISON: Final[dict[type[ast.cmpop], Callable[[float, float], bool]]] = {
    ast.Lt: operator.lt,
    ast.LtE: operator.le,
    ast.Gt: operator.gt,
    ast.GtE: operator.ge,
}


# Name: how many arguments, 0 for two or more.
FUNCTIONS: Final[dict[str, tuple[int, Callable[..., float]]]] = {
    "ceil": (1, lambda x: float(math.ceil(x - 1e-9))),  # 2.4 m in steps of 0.6 m is four steps
    "floor": (1, lambda x: float(math.floor(x + 1e-9))),
    "min": (0, min),
    "max": (0, max),
    "rise": (2, geometry.lean_height_m),
    "diagonal": (2, geometry.diagonal_m),
    "hoop_arc": (2, geometry.half_ellipse_m),
}


def evaluate(text: str, facts: Mapping[str, object]) -> Value:
    """Work out a sum.

    text    the sum, at most 200 characters
    facts   what each name stands for: figures in m, kg, years ...; words; yes or no
    Raises MissingFact for a name that facts does not give, ExpressionError otherwise.
    """
    return _value(_read(text), facts)


def number(text: str, facts: Mapping[str, object]) -> float:
    """Work out a sum that must come to a figure."""
    value = evaluate(text, facts)
    if isinstance(value, str):
        raise ExpressionError(f"{text!r} comes to a word, not a figure")
    return float(value)


@lru_cache(maxsize=4096)
def names_in(text: str) -> frozenset[str]:
    """Every name a sum asks for, as written: posts.length, spacing, i."""
    return frozenset(_names(_read(text)))


@lru_cache(maxsize=4096)
def _read(text: str) -> ast.expr:
    if len(text) > LONGEST:
        raise ExpressionError(f"a sum has at most {LONGEST} characters, not {len(text)}")
    try:
        body = ast.parse(text.strip(), mode="eval").body
    except (SyntaxError, ValueError, RecursionError, MemoryError):
        raise ExpressionError(f"{text!r} is no sum that can be read") from None
    _check(body)
    return body


def _check(node: ast.expr) -> None:  # noqa: C901 - one branch a kind of sum
    """Refuse everything that is not on the list; called for each part of the sum."""
    match node:
        case ast.Constant(value=bool() | str() | None):
            raise ExpressionError("a word may only be compared, as in bar.joint == 'halved'")
        case ast.Constant(value=int() | float()) | ast.Name():
            return
        case ast.Attribute(value=ast.Name()):
            return
        case ast.UnaryOp(op=ast.USub() | ast.Not(), operand=inner):
            parts = [inner]
        case ast.BinOp(left=left, op=op, right=right) if type(op) in _ARITHMETIC:
            parts = [left, right]
        case ast.BoolOp(values=values):
            parts = values
        case ast.IfExp(test=test, body=body, orelse=orelse):
            parts = [test, body, orelse]
        case ast.Compare(left=left, ops=[op], comparators=[right]):
            _check_comparison(left, op, right)
            return
        case ast.Call(func=ast.Name(id=name), args=args, keywords=[]) if name in FUNCTIONS:
            wanted = FUNCTIONS[name][0]
            if len(args) != wanted if wanted else len(args) < 2:
                raise ExpressionError(f"{name} takes {wanted or 'at least two'}, not {len(args)}")
            parts = args
        case _:
            raise ExpressionError(f"{ast.unparse(node)!r} has no place in a sum")
    for part in parts:
        _check(part)


def _check_comparison(left: ast.expr, op: ast.cmpop, right: ast.expr) -> None:
    sameness = isinstance(op, ast.Eq | ast.NotEq)
    if not sameness and type(op) not in _COMPARISON:
        raise ExpressionError("things are compared with == != < <= > >= and nothing else")
    for side in (left, right):
        if not (sameness and isinstance(side, ast.Constant) and isinstance(side.value, str)):
            _check(side)


def _names(node: ast.AST) -> list[str]:
    if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name):
        return [f"{node.value.id}.{node.attr}"]
    if isinstance(node, ast.Name):
        return [] if node.id == "pi" else [node.id]
    called = [node.func] if isinstance(node, ast.Call) else []
    inner = [child for child in ast.iter_child_nodes(node) if child not in called]
    return [name for child in inner for name in _names(child)]


def _value(node: ast.expr, facts: Mapping[str, object]) -> Value:  # noqa: C901, PLR0912
    match node:
        case ast.Constant(value=str() as word):
            return word
        case ast.Constant(value=int() | float() as figure):
            return float(figure)
        case ast.Name(id="pi"):
            return math.pi
        case ast.Name(id=name):
            return _fact(name, facts)
        case ast.Attribute(value=ast.Name(id=word), attr=slot):
            return _fact(f"{word}.{slot}", facts)
        case ast.UnaryOp(op=ast.Not(), operand=inner):
            return not _value(inner, facts)
        case ast.UnaryOp(operand=inner):
            return -_figure(inner, facts)
        case ast.BinOp(left=left, op=op, right=right):
            return _arithmetic(op, _figure(left, facts), _figure(right, facts))
        case ast.BoolOp(op=ast.And(), values=values):
            return all(_value(value, facts) for value in values)
        case ast.BoolOp(values=values):
            return any(_value(value, facts) for value in values)
        case ast.IfExp(test=test, body=body, orelse=orelse):
            return _value(body if _value(test, facts) else orelse, facts)
        case ast.Compare(left=left, ops=[ast.Eq()], comparators=[right]):
            return _value(left, facts) == _value(right, facts)
        case ast.Compare(left=left, ops=[ast.NotEq()], comparators=[right]):
            return _value(left, facts) != _value(right, facts)
        case ast.Compare(left=left, ops=[op], comparators=[right]):
            return _COMPARISON[type(op)](_figure(left, facts), _figure(right, facts))
        case ast.Call(func=ast.Name(id=name), args=args):
            return _called(name, [_figure(arg, facts) for arg in args])
    raise ExpressionError(f"{ast.unparse(node)!r} has no place in a sum")


# What it means in the garden that a function of geometry has no value.
_NO_SHAPE: Final = {
    "rise": "its feet stand further apart than its legs reach",
    "hoop_arc": "its hoops have no width or no height",
}


def _called(name: str, figures: list[float]) -> float:
    try:
        return FUNCTIONS[name][1](*figures)
    except (OverflowError, ValueError, ZeroDivisionError):
        raise ExpressionError(_NO_SHAPE.get(name, "its figures give no shape")) from None


def _arithmetic(op: ast.operator, left: float, right: float) -> float:
    if isinstance(op, ast.Div) and right == 0:
        raise ExpressionError("one of its figures is nought, and nothing can be made of that")
    return _ARITHMETIC[type(op)](left, right)


def _figure(node: ast.expr, facts: Mapping[str, object]) -> float:
    value = _value(node, facts)
    if isinstance(value, str):
        raise ExpressionError(
            f"{ast.unparse(node)} is the word {value!r}, where a figure is wanted"
        )
    return float(value)


def _fact(name: str, facts: Mapping[str, object]) -> Value:
    value = facts.get(name)
    if value is None:
        if name.startswith(SAID):
            return False
        raise MissingFact(name)
    if isinstance(value, bool | str):
        return value
    if isinstance(value, int | float):
        return float(value)
    raise ExpressionError(f"{name} is neither a figure nor a word")
