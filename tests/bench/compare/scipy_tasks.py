"""SciPy's and scikit-image's side of the comparison: reads one task a line, answers with seconds, check value and peak memory.

Started by gauge_compare, which puts the data into bare files first. A task is run on data that is already in memory."""
import sys
import time

import numpy as np
from scipy import ndimage
from skimage import graph, measure, segmentation

LEVEL = 220
cache = {}


def array(path, dtype, shape):
    key = (path, dtype, shape)
    if key not in cache:
        cache[key] = np.fromfile(path, dtype=dtype).reshape(shape)
    return cache[key]


def volume(path, nx, ny, nz):
    return array(path, np.int16, (int(nz), int(ny), int(nx)))


def box(path, n, dtype):
    return array(path, dtype, (int(n),) * 3)


def components(path, nx, ny, nz):
    labels, count = ndimage.label(volume(path, nx, ny, nz) >= LEVEL)
    return labels, lambda: float(count)


def grow(path, nx, ny, nz, i, j, k):
    bright = volume(path, nx, ny, nz) >= LEVEL
    mask = segmentation.flood(bright, (int(k), int(j), int(i)), connectivity=1)
    return mask, lambda: float(np.count_nonzero(mask))


def distance_inside(path, n, step):
    d = ndimage.distance_transform_edt(box(path, n, np.uint8), sampling=float(step))
    return d, lambda: 1e-3 * float(d.sum(dtype=np.float64))


def distance_signed(path, n, step):
    mask = box(path, n, np.uint8)
    outside = ndimage.distance_transform_edt(mask == 0, sampling=float(step))
    d = outside - ndimage.distance_transform_edt(mask, sampling=float(step))
    return d, lambda: 1e-3 * float(np.maximum(d, 0.0).sum(dtype=np.float64))


def section_contour(path, columns, rows):
    picture = array(path, np.float32, (int(rows), int(columns)))
    largest, perimeter = 0.0, 0.0
    for line in measure.find_contours(picture, LEVEL):
        step = np.roll(line, -1, axis=0) - line
        area = 0.5 * abs(float(np.sum(line[:, 0] * step[:, 1] - line[:, 1] * step[:, 0])))
        if area > largest:
            largest, perimeter = area, float(np.hypot(step[:, 0], step[:, 1]).sum())
    return None, lambda: largest + perimeter


def costs_of(path, n, kind):
    key = (path, kind)
    if key not in cache:
        field = box(path, n, np.float32).astype(np.float64)
        inside = field > 0.0
        cost = np.full(field.shape, -1.0)  # negative: no way through
        cost[inside] = 1.0 if kind == "plain" else (3.0 / np.maximum(field[inside], 0.2)) ** 2
        cache[key] = cost
    return cache[key]


def arrival(path, n, step, start, end):
    cost = costs_of(path, n, "plain")
    shape = cost.shape
    walk = graph.MCP_Geometric(cost, fully_connected=True)
    times, _ = walk.find_costs([np.unravel_index(int(start), shape)])
    return times, lambda: float(step) * float(times[np.unravel_index(int(end), shape)])


def minimal_path(path, n, step, start, end):
    cost = costs_of(path, n, "deep")
    shape = cost.shape
    way, total = graph.route_through_array(cost, np.unravel_index(int(start), shape), np.unravel_index(int(end), shape),
                                           fully_connected=True, geometric=True)
    return way, lambda: float(step) * float(total)


def surface(path, nx, ny, nz):
    points, faces, normals, _ = measure.marching_cubes(volume(path, nx, ny, nz), LEVEL, spacing=(0.5, 0.4, 0.4))
    return (points, faces, normals), lambda: float(measure.mesh_surface_area(points, faces))


def oblique(path, nx, ny, nz, columns, rows, *matrix):
    """matrix: voxel coordinates of pixel (0, 0), of a step along a row, of a step along a column; x, y, z each."""
    first, along, down = (np.array(list(map(float, matrix[3 * n:3 * n + 3]))) for n in range(3))
    c, r = np.meshgrid(np.arange(int(columns)), np.arange(int(rows)))
    at = first[:, None, None] + along[:, None, None] * c + down[:, None, None] * r
    picture = ndimage.map_coordinates(volume(path, nx, ny, nz), at[::-1], order=1, output=np.float32)
    return picture, lambda: float(picture.mean(dtype=np.float64))


def prepare(name, arguments):
    """Data into memory, prices of ways made."""
    if name in ("components", "grow", "surface", "oblique"):
        volume(*arguments[:4])
    elif name.startswith("distance"):
        box(*arguments[:2], np.uint8)
    elif name in ("arrival", "minimal_path"):
        costs_of(*arguments[:2], "plain" if name == "arrival" else "deep")
    else:
        array(arguments[0], np.float32, (int(arguments[2]), int(arguments[1])))


def resident(key):
    with open("/proc/self/status") as status:
        for line in status:
            if line.startswith(key + ":"):
                return int(line.split()[1]) * 1024
    return 0


def main():
    tasks = {f.__name__: f for f in (components, grow, distance_inside, distance_signed, section_contour, arrival,
                                     minimal_path, surface, oblique)}
    print("ready", flush=True)
    for line in sys.stdin:
        name, *arguments = line.split()
        try:
            prepare(name, arguments)
            with open("/proc/self/clear_refs", "w") as clear:
                clear.write("5")
            before = resident("VmRSS")
            processor, start = time.process_time(), time.perf_counter()
            result, check = tasks[name](*arguments)
            seconds, processor = time.perf_counter() - start, time.process_time() - processor
            peak = max(0, resident("VmHWM") - before)
            value = check()
            del result
            print(f"done {seconds!r} {processor!r} {value!r} {peak}", flush=True)
        except Exception as error:  # told to the other side, which prints it
            print(f"failed {type(error).__name__}: {error}".replace("\n", " "), flush=True)


if __name__ == "__main__":
    main()
