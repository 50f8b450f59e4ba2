"""`frozen`: value classes that cannot be changed once made, cheap enough for a hundred.

They behave as `dataclass(frozen=True)` does: fields from annotations, equal by value, hashable,
with a readable form. The standard decorator compiles seven methods for every class, half a
millisecond each time the program starts; here one method is compiled and the others are shared.
Type checkers treat both alike.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, NoReturn, TypeVar

if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import dataclass_transform
else:

    def dataclass_transform(**_options: object):  # noqa: ANN201 - no type checker comes here
        """Do nothing: the standard decorator costs an import and only speaks to type checkers."""
        return lambda decorator: decorator


T = TypeVar("T")


class FrozenError(AttributeError):
    """Somebody tried to change a value that others rely on."""


@dataclass_transform(frozen_default=True)
def frozen(cls: type[T]) -> type[T]:
    """Make a class of annotated fields into a value class.

    A default stands after the field's annotation and is shared by all values, so it must be one
    that cannot change.
    """
    own = cls.__dict__.get("__annotations__", ())  # noqa: RUF063 - its own, not its parents'
    names = tuple(getattr(cls, "FIELDS", ())) + tuple(own)
    cls.FIELDS = names  # type: ignore[attr-defined]
    # many classes are never made into a value in one run: `__init__` is compiled at the first
    cls.__init__ = _init_at_first(cls, names)  # type: ignore[method-assign]
    cls.__setattr__ = _refuse  # type: ignore[method-assign]
    cls.__delattr__ = _refuse  # type: ignore[method-assign]
    if "__eq__" not in cls.__dict__:
        cls.__eq__ = _equal  # type: ignore[method-assign]
        cls.__hash__ = _hash  # type: ignore[method-assign]
    if "__repr__" not in cls.__dict__:
        cls.__repr__ = _shown  # type: ignore[method-assign]
    return cls


def _init_at_first(cls: type, names: tuple[str, ...]) -> Callable[..., None]:
    """An `__init__` that puts the compiled one in its place."""

    def first(self: object, *values: object, **named: object) -> None:
        init = _init(cls, names)
        if cls.__dict__["__init__"] is first:
            cls.__init__ = init  # type: ignore[misc]
        init(self, *values, **named)

    return first


def _init(cls: type, names: tuple[str, ...]) -> Callable[..., None]:
    defaults = {name: getattr(cls, name) for name in names if hasattr(cls, name)}
    arguments = "".join(
        f", {name}=_default_{name}" if name in defaults else f", {name}" for name in names
    )
    body = "".join(f"\n    d[{name!r}] = {name}" for name in names) or "\n    pass"
    known: dict[str, Any] = {f"_default_{name}": value for name, value in defaults.items()}
    text = f"def __init__(self{arguments}):\n    d = self.__dict__{body}"
    exec(text, known)  # noqa: S102 - names of fields, written in this program
    init: Callable[..., None] = known["__init__"]
    init.__qualname__ = f"{cls.__qualname__}.__init__"
    return init


def replace(value: T, /, **changes: object) -> T:
    """The same value with some fields changed."""
    fields = {name: value.__dict__[name] for name in value.FIELDS}  # type: ignore[attr-defined]
    fields.update(changes)
    return type(value)(**fields)


def _values(self: object) -> tuple[object, ...]:
    own = self.__dict__
    return tuple(own[name] for name in self.FIELDS)  # type: ignore[attr-defined]


def _equal(self: object, other: object) -> bool:
    if self is other:
        return True
    if type(self) is not type(other):
        return False
    return _values(self) == _values(other)


def _hash(self: object) -> int:
    return hash(_values(self))


def _shown(self: object) -> str:
    own = self.__dict__
    names: tuple[str, ...] = self.FIELDS  # type: ignore[attr-defined]
    fields = ", ".join(f"{name}={own[name]!r}" for name in names)
    return f"{type(self).__qualname__}({fields})"


def _refuse(self: object, name: str, *_value: object) -> NoReturn:
    msg = f"{type(self).__qualname__}.{name} cannot be changed"
    raise FrozenError(msg)
