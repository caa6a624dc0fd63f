"""Prints the folder of the data that the pydicom package brings."""
import pathlib

import pydicom

print(pathlib.Path(pydicom.__file__).parent / "data")
