"""GPX text made on the spot."""

GPX_11 = "http://www.topografix.com/GPX/1/1"
GPX_10 = "http://www.topografix.com/GPX/1/0"


def point(tag, lat, lon, ele=None, time=None, name=None):
    inner = "".join(
        f"<{child}>{value}</{child}>"
        for child, value in (("ele", ele), ("time", time), ("name", name))
        if value is not None
    )
    return f'<{tag} lat="{lat}" lon="{lon}">{inner}</{tag}>'


def segment(points, tag="trkpt"):
    return f"<trkseg>{''.join(point(tag, *p) for p in points)}</trkseg>"


def track(*segments, name=""):
    return f"<trk><name>{name}</name>{''.join(map(segment, segments))}</trk>"


def route(points, name=""):
    return f"<rte><name>{name}</name>{''.join(point('rtept', *p) for p in points)}</rte>"


def waypoint(lat, lon, name=None):
    return point("wpt", lat, lon, name=name)


def document(*parts, namespace=GPX_11, head='<?xml version="1.0" encoding="UTF-8"?>'):
    spoken = f' xmlns="{namespace}"' if namespace else ""
    return f'{head}<gpx{spoken} version="1.1" creator="test">{"".join(parts)}</gpx>'


def eastward(count, start=7.0, lat=45.0, step=0.001, height=lambda i: 500.0 + i):
    """Points on a parallel; at 45 degrees a thousandth of a degree is 78.8 m."""
    return [(lat, round(start + step * i, 6), height(i)) for i in range(count)]
