"""The same program as the `plantframe` command, for `python -m plantframe`."""

from plantframe.commands.main import program

if __name__ == "__main__":
    program()
