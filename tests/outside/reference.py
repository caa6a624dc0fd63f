"""Independent answers for the tests beside this file, from NumPy, SciPy and scikit-image (Debian's packages).

Called as: reference.py FUNCTION arguments.json answer.json. Each function takes and returns plain JSON values.
"""

import json
import sys

import numpy as np


def elliptic_e(axis_ratio):
    """scipy.special.ellipe of the parameter m = 1 - q^2."""
    from scipy.special import ellipe

    q = np.array(axis_ratio)
    return ellipe((1.0 - q) * (1.0 + q)).tolist()


def arc_length_of_ellipse(a, b):
    """Perimeter by adaptive quadrature of the arc length."""
    from scipy.integrate import quad

    def speed(t):
        return np.hypot(a * np.sin(t), b * np.cos(t))

    return 4.0 * quad(speed, 0.0, np.pi / 2, epsabs=1e-13, epsrel=1e-13)[0]


def ellipse_model(points):
    """skimage.measure.EllipseModel: a direct least-squares fit of another hand."""
    from skimage.measure import EllipseModel

    model = EllipseModel()
    if not model.estimate(np.array(points)):
        raise RuntimeError("no ellipse")
    xc, yc, a, b, theta = model.params
    if a < b:
        a, b, theta = b, a, theta + np.pi / 2
    return {"center": [xc, yc], "a": a, "b": b, "angle": theta}


def geometric_fit(points, start):
    """scipy.optimize.least_squares on another formulation: every point has its own place on the ellipse."""
    from scipy.optimize import least_squares

    points = np.array(points)

    def curve(q):
        xc, yc, a, b, angle = q[:5]
        t = q[5:]
        x, y = a * np.cos(t), b * np.sin(t)
        return np.column_stack([xc + np.cos(angle) * x - np.sin(angle) * y,
                                yc + np.sin(angle) * x + np.cos(angle) * y])

    xc, yc, a, b, angle = start
    d = points - [xc, yc]
    u, v = d @ [np.cos(angle), np.sin(angle)], d @ [-np.sin(angle), np.cos(angle)]
    first = np.concatenate([start, np.arctan2(v / b, u / a)])
    found = least_squares(lambda q: (curve(q) - points).ravel(), first, method="lm", xtol=1e-15, ftol=1e-15,
                          gtol=1e-15, max_nfev=100000)
    xc, yc, a, b, angle = found.x[:5]
    return {"center": [xc, yc], "a": a, "b": b, "angle": angle, "squares": 2.0 * found.cost}


def smoothing_spline(t, y, weights, lam):
    """scipy.interpolate.make_smoothing_spline at its knots, column by column."""
    from scipy.interpolate import make_smoothing_spline

    y = np.array(y)
    columns = [make_smoothing_spline(t, y[:, k], w=np.array(weights), lam=lam)(t) for k in range(y.shape[1])]
    return np.column_stack(columns).tolist()


def cubic_spline(points, closed, pieces):
    """scipy.interpolate.CubicSpline over the chord length: length and area by adaptive quadrature, and places."""
    from scipy.integrate import quad
    from scipy.interpolate import CubicSpline

    p = np.array(points)
    if closed:
        p = np.vstack([p, p[:1]])
    t = np.concatenate([[0.0], np.cumsum(np.linalg.norm(np.diff(p, axis=0), axis=1))])
    spline = CubicSpline(t, p, bc_type="periodic" if closed else "not-a-knot")
    slope = spline.derivative()

    def over(f):
        return sum(quad(f, a, b, epsabs=1e-11, epsrel=1e-11)[0] for a, b in zip(t[:-1], t[1:]))

    def sector(s):
        (x, y), (dx, dy) = spline(s), slope(s)
        return 0.5 * (x * dy - y * dx)

    at = np.concatenate([a + (b - a) * np.arange(pieces) / pieces for a, b in zip(t[:-1], t[1:])])
    if not closed:
        at = np.append(at, t[-1])
    return {"length": over(lambda s: np.linalg.norm(slope(s))), "area": over(sector), "sampled": spline(at).tolist()}


def contour_of_level(image, level, point):
    """skimage.measure.find_contours: the closed contour around `point`, with its length and area.

    Coordinates are (column, row). The area is the trapezoid rule on the polygon.
    """
    from skimage.measure import find_contours, points_in_poly

    for contour in find_contours(np.array(image), level):
        xy = contour[:, ::-1]
        if np.allclose(xy[0], xy[-1]) and points_in_poly([point], xy)[0]:
            steps = np.diff(xy, axis=0)
            area = abs(np.trapz(xy[:, 1], xy[:, 0]))
            return {"points": xy[:-1].tolist(), "length": float(np.hypot(*steps.T).sum()), "area": float(area)}
    raise RuntimeError("no closed contour around the point")


def pixel_measures(image, level):
    """scikit-image on the thresholded picture: pixel area, Crofton perimeter, greatest Feret diameter."""
    from skimage.measure import label, perimeter_crofton, regionprops

    mask = np.array(image) > level
    region = regionprops(label(mask))[0]
    return {"area": float(region.area), "perimeter": float(perimeter_crofton(mask, directions=4)),
            "feret": float(region.feret_diameter_max)}


def hull(points):
    """scipy.spatial: area and perimeter of the convex hull, greatest distance between two points."""
    from scipy.spatial import ConvexHull
    from scipy.spatial.distance import pdist

    points = np.array(points)
    found = ConvexHull(points)
    return {"area": found.volume, "perimeter": found.area, "greatest": float(pdist(points).max())}


def distance_inside(mask, shape, step):
    """scipy.ndimage.distance_transform_edt; the mask comes with the first axis fastest."""
    from scipy.ndimage import distance_transform_edt

    volume = np.array(mask, dtype=np.uint8).reshape(shape, order="F")
    return distance_transform_edt(volume, sampling=step).ravel(order="F").tolist()


def _rays(values, shape, voxel_from_patient, source, first, column_step, row_step, columns, rows):
    """Attenuation relative to water; source and, pixel by pixel, the way to the detector, both in voxels and in mm."""
    mu = np.maximum(np.array(values, dtype=float).reshape(shape, order="F"), -1000.0) / 1000.0 + 1.0
    affine = np.array(voxel_from_patient)
    row, column = np.mgrid[0:rows, 0:columns]
    pixels = (np.array(first) + column.reshape(-1, 1) * np.array(column_step) + row.reshape(-1, 1) * np.array(row_step))
    ways = pixels - np.array(source)
    return mu, affine[:, :3] @ source + affine[:, 3], ways @ affine[:, :3].T, np.linalg.norm(ways, axis=1)


def _inside(origin, way, shape):
    """Parameters between which a ray lies within the voxels' cells; none: (1, 0)."""
    with np.errstate(divide="ignore"):
        a = (-0.5 - origin) / way
        b = (np.array(shape) - 0.5 - origin) / way
    enters, leaves = max(0.0, np.minimum(a, b).max()), min(1.0, np.maximum(a, b).min())
    return (enters, leaves) if enters < leaves else (1.0, 0.0)


def slice_sums(**camera):
    """scipy.ndimage.map_coordinates where each ray meets the slices of one axis, times the ray's length in each slice."""
    from scipy.ndimage import map_coordinates

    mu, origin, ways, lengths = _rays(**camera)
    axis = int(np.abs(ways[(camera["rows"] // 2) * camera["columns"] + camera["columns"] // 2]).argmax())
    sums = []
    for way, length in zip(ways, lengths):
        enters, leaves = _inside(origin, way, mu.shape)
        if enters > leaves:
            sums.append(0.0)
            continue
        low, high = sorted((origin[axis] + enters * way[axis], origin[axis] + leaves * way[axis]))
        slices = np.arange(mu.shape[axis])
        shares = np.clip(np.minimum(high, slices + 0.5) - np.maximum(low, slices - 0.5), 0.0, None)
        places = origin[:, None] + np.outer(way, (slices - origin[axis]) / way[axis])
        sums.append(float(shares @ map_coordinates(mu, places, order=1, mode="nearest")) * length / abs(way[axis]))
    return sums


def line_integrals(**camera):
    """scipy.ndimage.map_coordinates at 1500 steps along each ray's part within the voxels' cells."""
    from scipy.ndimage import map_coordinates

    mu, origin, ways, lengths = _rays(**camera)
    sums = []
    for way, length in zip(ways, lengths):
        enters, leaves = _inside(origin, way, mu.shape)
        t = enters + (np.arange(1500) + 0.5) / 1500 * max(leaves - enters, 0.0)
        values = map_coordinates(mu, origin[:, None] + np.outer(way, t), order=1, mode="nearest")
        sums.append(float(values.mean() * max(leaves - enters, 0.0) * length))
    return sums


def gaussian(values, shape, sigma):
    """scipy.ndimage.gaussian_filter, faces mirrored about the outermost node, cut at 3 sigma."""
    from scipy.ndimage import gaussian_filter

    field = np.array(values).reshape(shape, order="F")
    return gaussian_filter(field, sigma, mode="mirror", truncate=3.0).ravel(order="F").tolist()


def trilinear(values, shape, places):
    """scipy.ndimage.map_coordinates(order=1) at voxel coordinates, edges held."""
    from scipy.ndimage import map_coordinates

    volume = np.array(values, dtype=float).reshape(shape, order="F")
    return map_coordinates(volume, np.array(places).T, order=1, mode="nearest").tolist()


def ellipse_from_widths(angles, widths, sigmas):
    """scipy.optimize.least_squares in semi-axes and direction, from several starts; the best."""
    from scipy.optimize import least_squares

    t, w, u = np.array(angles), np.array(widths), np.array(sigmas)

    def misfit(q):
        a, b, d = q
        return (w - 2.0 / np.sqrt((np.cos(t - d) / a) ** 2 + (np.sin(t - d) / b) ** 2)) / u

    mean = w.mean() / 2
    found = [least_squares(misfit, [1.1 * mean, 0.9 * mean, d], xtol=1e-15, ftol=1e-15, gtol=1e-15)
             for d in np.linspace(0, np.pi, 8, endpoint=False)]
    best = min(found, key=lambda f: f.cost)
    a, b = sorted(np.abs(best.x[:2]), reverse=True)
    return {"longest": 2 * a, "shortest": 2 * b, "squares": 2 * best.cost}


def probe_pose(echo, angles, view, ct, in_plane, across, angle_sigma):
    """scipy.optimize.least_squares over a rotation vector, a translation and one angle error a view: a formulation of
    another hand than the program's (its residuals compare in CT space, turned into the view)."""
    from scipy.optimize import least_squares
    from scipy.spatial.transform import Rotation

    echo, angles, view, ct = np.array(echo), np.array(angles), np.array(view), np.array(ct)
    views = view.max() + 1
    flat = np.column_stack([echo[:, 0] * np.cos(angles), echo[:, 0] * np.sin(angles), echo[:, 1]])
    start, _ = Rotation.align_vectors(ct - ct.mean(0), flat - flat.mean(0))
    shift = ct.mean(0) - start.apply(flat.mean(0))

    def misfit(q):
        r, turn = Rotation.from_rotvec(q[:3]), q[6:]
        t = angles + turn[view]
        side = r.apply(np.column_stack([np.cos(t), np.sin(t), 0 * t]))
        beam = r.apply([0, 0, 1])
        off = ct - q[3:6] - echo[:, :1] * side - echo[:, 1:] * beam
        normal = np.cross(side, beam)
        return np.concatenate([(off * side).sum(1) / in_plane, off @ beam / in_plane, (off * normal).sum(1) / across,
                               turn / angle_sigma])

    first = np.concatenate([start.as_rotvec(), shift, np.zeros(views)])
    found = least_squares(misfit, first, xtol=1e-15, ftol=1e-15, gtol=1e-15)
    pose = np.eye(4)
    pose[:3, :3] = Rotation.from_rotvec(found.x[:3]).as_matrix()
    pose[:3, 3] = found.x[3:6]
    return {"pose": pose.tolist(), "squares": 2 * found.cost}


def paired_differences(first, second):
    """Mean difference with its t interval, and the regression of differences on means."""
    from scipy import stats

    a, b = np.array(first), np.array(second)
    d = a - b
    interval = stats.t.interval(0.95, len(d) - 1, loc=d.mean(), scale=stats.sem(d))
    line = stats.linregress((a + b) / 2, d)
    return {"mean": d.mean(), "interval": list(interval), "slope": line.slope, "slope_error": line.stderr,
            "chance": line.pvalue}


def consistency_correlation(readings):
    """ICC(3,1) with its interval, from residuals of a two-way least-squares fit with dummies."""
    from scipy import stats

    y = np.array(readings)
    n, k = y.shape
    rows, columns = np.repeat(np.eye(n), k, 0), np.tile(np.eye(k), (n, 1))

    def squares(design):
        fit = design @ np.linalg.lstsq(design, y.ravel(), rcond=None)[0]
        return ((y.ravel() - fit) ** 2).sum()

    rest = squares(np.hstack([rows, columns]))
    ems = rest / ((n - 1) * (k - 1))
    ratio = (squares(columns) - rest) / (n - 1) / ems
    low = ratio / stats.f.ppf(0.975, n - 1, (n - 1) * (k - 1))
    high = ratio * stats.f.ppf(0.975, (n - 1) * (k - 1), n - 1)
    return [(x - 1) / (x + k - 1) for x in (ratio, low, high)]


def surface(values, shape, level, places):
    """Marching cubes: area, volume, and distances from given places to the surface's vertices and back."""
    from scipy.spatial import cKDTree
    from skimage.measure import marching_cubes, mesh_surface_area

    block = np.array(values, dtype=float).reshape(shape[::-1])
    points, faces, _, _ = marching_cubes(block, level, method="lorensen", gradient_direction="descent")
    a, b, c = (points[faces[:, i]] for i in range(3))
    volume = abs(np.einsum("ij,ij->i", a, np.cross(b, c)).sum()) / 6
    ours = np.array(places)[:, ::-1]
    there, _ = cKDTree(points).query(ours)
    back, _ = cKDTree(ours).query(points)
    return {"area": float(mesh_surface_area(points, faces)), "volume": float(volume), "points": len(points),
            "there": float(there.max()), "back": float(back.max())}


def plane_by_svd(points):
    """Orthogonal regression by numpy.linalg.svd, and again by scipy.odr in another formulation (z as a function of x and y)."""
    from scipy import odr

    p = np.array(points)
    centre = p.mean(axis=0)
    _, singular, rows = np.linalg.svd(p - centre)
    normal = rows[2]
    away = (p - centre) @ normal
    fit = odr.ODR(odr.RealData(p[:, :2].T, p[:, 2]),
                  odr.Model(lambda b, x: b[0] + b[1] * x[0] + b[2] * x[1]), beta0=[centre[2], 0.0, 0.0],
                  sstol=1e-15, partol=1e-15, maxit=500).run()
    tilted = np.array([-fit.beta[1], -fit.beta[2], 1.0])
    return {"centre": centre.tolist(), "normal": normal.tolist(), "rms": float(np.sqrt(np.mean(away**2))),
            "largest": float(np.abs(away).max()), "spreads": (singular / np.sqrt(len(p))).tolist(),
            "odr_normal": (tilted / np.linalg.norm(tilted)).tolist()}


def edge_on_views(normals, primary):
    """Edge-on secondary angle at each primary angle by root finding (scipy.optimize.brentq) on rotation matrices
    (scipy.spatial.transform), and the en-face view by maximising |n . d| (scipy.optimize.minimize): no closed formula."""
    from scipy.optimize import brentq, minimize
    from scipy.spatial.transform import Rotation

    def beam(a, b):
        # The detector starts before the patient (-y), is tilted to the head about the left-right axis, then turned to the left.
        return Rotation.from_euler("xz", [-b, a], degrees=True).apply([0.0, -1.0, 0.0])

    answers = []
    for n in normals:
        n = np.array(n) / np.linalg.norm(n)
        secondary = [brentq(lambda b: n @ beam(a, b), -90.0, 90.0, xtol=1e-12) for a in primary]
        starts = [(a, b) for a in range(-90, 91, 30) for b in range(-75, 76, 30)]
        start = max(starts, key=lambda v: abs(n @ beam(*v)))
        best = minimize(lambda v: -(n @ beam(*v)) ** 2, start, method="Nelder-Mead",
                        options={"xatol": 1e-10, "fatol": 1e-16, "maxiter": 4000})
        answers.append({"secondary": secondary, "en_face": beam(*best.x).tolist()})
    return answers


def widths_in_views(points, normal, views):
    """Extent of a contour across the projected normal, by rotating it into the picture with scipy's rotations."""
    from scipy.spatial.transform import Rotation

    points, normal = np.array(points), np.array(normal)
    widths = []
    for a, b in views:
        # Undo the arm's turn: then the detector is before the patient and the picture's axes are +x and +z.
        back = Rotation.from_euler("xz", [-b, a], degrees=True).inv()
        seen, axis = back.apply(points)[:, [0, 2]], back.apply(normal)[[0, 2]]
        across = np.array([-axis[1], axis[0]]) / np.linalg.norm(axis)
        widths.append(float(np.ptp(seen @ across)))
    return widths


def seat_reach(grid, values, line, bodies):
    """How far bodies (free and narrowest width) slide along a line: rays by scipy's interpolation, hulls by Qhull. Stopped where the
    hull's perimeter is that of less than the narrowest width, where opposite sides shift, or where the wall dents the hull."""
    from scipy.interpolate import RegularGridInterpolator
    from scipy.spatial import ConvexHull

    shape = grid["shape"]
    block = np.array(values, dtype=float).reshape(shape[::-1])
    look = RegularGridInterpolator([np.arange(n) for n in shape[::-1]], block, bounds_error=False, fill_value=1.0)
    start, way = np.array(line)
    first = np.cross(way, [1.0, 0.0, 0.0] if abs(way[0]) < 0.8 else [0.0, 1.0, 0.0])
    first /= np.linalg.norm(first)
    second = np.cross(way, first)
    count = 180
    angles = 2 * np.pi * np.arange(count) / count
    to = np.stack([np.cos(angles), np.sin(angles)], axis=1)
    in_patient = to @ np.stack([first, second])
    far = np.pi / 4 * max(free for free, _ in bodies)
    steps = np.arange(0.0, far + 0.1, 0.05)

    def rays(t):
        places = start + t * way + steps[:, None, None] * in_patient[None]
        nodes = (places - np.array(grid["origin"])) @ np.array(grid["axes"]) / grid["step"]
        inside = look(nodes[..., ::-1])
        wall = inside <= 0
        at = np.where(wall.any(axis=0), wall.argmax(axis=0), 0)
        column = np.arange(count)
        before, there = inside[at - 1, column], inside[at, column]
        met = steps[at] - 0.05 * there / np.where(there == before, 1.0, there - before)
        return np.where(wall[0], 0.0, np.where(wall.any(axis=0), met, far))

    def middles(r, free):
        cut = np.minimum(r, free / 2)
        return (cut - np.roll(cut, count // 2)) / 2

    reach = [None] * len(bodies)
    at_start, t = rays(0.0), 0.0
    while None in reach:
        r = rays(t)
        for i, (free, narrowest) in enumerate(bodies):
            if reach[i] is not None:
                continue
            play = (free - narrowest) / 2
            stopped = r.min() <= 0
            if not stopped:
                width = ConvexHull(np.minimum(r, np.pi / 4 * free)[:, None] * to).area / np.pi
                moved = np.abs(middles(r, free) - middles(at_start, free)).max()
                cut = np.minimum(r, free / 2)
                hull = ConvexHull(cut[:, None] * to).equations
                facing = to @ hull[:, :2].T
                dents = np.where(facing > 1e-9, -hull[:, 2] / np.where(facing > 1e-9, facing, 1.0), np.inf).min(axis=1) - cut
                stopped = width < narrowest or moved > play or dents.max() > play
            if stopped:
                reach[i] = t
        t += 0.05
    return {"reach": reach}


def seat_distances(frame, body, disc, places):
    """Distances of places to the nearest of many points on two bodies of revolution with flat ends."""
    from scipy.spatial import cKDTree

    origin, first, second, way = np.array(frame)
    points = []

    def ring(t, radius):
        a = np.linspace(0, 2 * np.pi, max(3, int(2 * np.pi * radius / 0.1)), endpoint=False)[:, None]
        points.append(origin + t * way + radius * (np.cos(a) * first + np.sin(a) * second))

    for profile in (body, disc):
        for (t0, r0), (t1, r1) in zip(profile, profile[1:]):
            for share in np.linspace(0, 1, int((t1 - t0) / 0.1) + 2):
                ring(t0 + share * (t1 - t0), r0 + share * (r1 - r0))
        for t, radius in (profile[0], profile[-1]):
            for r in np.arange(0.0, radius, 0.1):
                ring(t, r)
    distances, _ = cKDTree(np.vstack(points)).query(np.array(places))
    return distances.tolist()


def main():
    function, arguments, answer = sys.argv[1:]
    with open(arguments, encoding="utf-8") as file:
        result = globals()[function](**json.load(file))
    with open(answer, "w", encoding="utf-8") as file:
        json.dump(result, file)


if __name__ == "__main__":
    main()
