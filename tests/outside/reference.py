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


def main():
    function, arguments, answer = sys.argv[1:]
    with open(arguments, encoding="utf-8") as file:
        result = globals()[function](**json.load(file))
    with open(answer, "w", encoding="utf-8") as file:
        json.dump(result, file)


if __name__ == "__main__":
    main()
