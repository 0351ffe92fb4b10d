using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Pieces;

/// <summary>Lays a tape on an outline: a kind's finished measurements read off corners and edges, and its area by formulas.</summary>
internal static class MeasuredBack
{
    public static Dictionary<string, double> Sizes(string shape, Outline outline)
    {
        Point C(string corner) => outline.CornerAt(outline.Corners.ToList().FindIndex(c => c.Name == corner));
        EdgeCurve E(string edge) => outline.Edges.Single(e => e.Name == edge).Curve;
        Point Middle(string edge) => E(edge).At(0.5);
        double Across(string a, string b) => C(a).DistanceTo(C(b));
        var box = Box.Around(outline.Ring(0.001));
        switch (shape)
        {
            case "triangle":
                var top = C("left tip").Toward(C("right tip"), 0.5);
                return new() { ["wingspan"] = Across("left tip", "right tip"), ["depth"] = box.Height, ["offset"] = C("foot").X - top.X };
            case "crescent":
                return new() { ["wingspan"] = Across("left tip", "right tip"), ["depth"] = Middle("top").DistanceTo(Middle("lower")), ["rise"] = C("left tip").Y - Middle("top").Y };
            case "semicircle":
                return new() { ["wingspan"] = box.Width };
            case "circle":
                return new() { ["diameter"] = box.Height };
            case "oval":
                return new() { ["width"] = Across("left", "right"), ["height"] = box.Height };
            case "square":
                return new() { ["side"] = box.Height };
            case "rectangle":
                return new() { ["width"] = E("top").Length, ["length"] = E("left").Length };
            case "parallelogram":
                return new() { ["width"] = E("top").Length, ["height"] = box.Height, ["offset"] = C("upper right").X - C("lower right").X };
            case "trapezoid":
                return new() { ["lowerWidth"] = E("lower").Length, ["topWidth"] = E("top").Length, ["height"] = box.Height, ["offset"] = Middle("top").X - Middle("lower").X };
            case "kite":
                return new() { ["wingspan"] = box.Width, ["depth"] = Across("foot", "top"), ["peak"] = box.Upper - C("left tip").Y };
            case "collar":
                return new() { ["innerEdge"] = E("inner").Length, ["outerEdge"] = E("outer").Length, ["depth"] = E("inner").At(0.3).DistanceTo(E("outer").At(0.7)) };
            case "panel":
                return new()
                {
                    ["hem"] = E("hem").Length,
                    ["chest"] = Across("left underarm", "right underarm"),
                    ["length"] = box.Height,
                    ["armhole"] = C("right shoulder tip").Y - C("right underarm").Y,
                    ["shoulders"] = Across("left shoulder tip", "right shoulder tip"),
                    ["shoulderSlope"] = box.Upper - C("left shoulder tip").Y,
                    ["neckWidth"] = Across("left neck", "right neck"),
                    ["neckDepth"] = box.Upper - Middle("neckline").Y,
                };
            case "sleeve":
                return new() { ["cuff"] = E("cuff").Length, ["upperArm"] = Across("left underarm", "right underarm"), ["length"] = C("left underarm").Y, ["cap"] = Middle("cap").Y - C("left underarm").Y };
            default:
                return new() { ["side"] = E("lower").Length, ["height"] = box.Height };
        }
    }

    public static double Area(string shape, Dictionary<string, double> s, int edges)
    {
        switch (shape)
        {
            case "triangle":
                return s["wingspan"] * s["depth"] / 2;
            case "crescent":
                return Segment(s["wingspan"], s["depth"] + s["rise"]) - Segment(s["wingspan"], s["rise"]);
            case "semicircle":
                return Math.PI * s["wingspan"] * s["wingspan"] / 8;
            case "circle":
                return Math.PI * s["diameter"] * s["diameter"] / 4;
            case "oval":
                return Math.PI * s["width"] * s["height"] / 4;
            case "square":
                return s["side"] * s["side"];
            case "rectangle":
                return s["width"] * s["length"];
            case "parallelogram":
                return s["width"] * s["height"];
            case "trapezoid":
                return (s["lowerWidth"] + s["topWidth"]) / 2 * s["height"];
            case "kite":
                return s["wingspan"] * s["depth"] / 2;
            case "collar":
                return (s["innerEdge"] + s["outerEdge"]) / 2 * s["depth"];
            case "panel":
                double underarm = s["length"] - s["shoulderSlope"] - s["armhole"], inset = (s["chest"] - s["shoulders"]) / 2;
                var armholes = inset > 0 ? 2 * inset * (s["armhole"] / 2) * (1 - (Math.PI / 4)) : inset * s["armhole"];
                return ((s["hem"] + s["chest"]) / 2 * underarm) + (s["shoulders"] * s["armhole"]) + armholes
                    + ((s["shoulders"] + s["neckWidth"]) / 2 * s["shoulderSlope"]) - (Math.PI * s["neckWidth"] * s["neckDepth"] / 4);
            case "sleeve":
                return ((s["cuff"] + s["upperArm"]) / 2 * s["length"]) + (s["upperArm"] * s["cap"] / 2);
            default:
                return edges * s["side"] * s["side"] / (4 * Math.Tan(Math.PI / edges));
        }
    }

    /// <summary>Area of a circular segment (r^2/2)(angle - sin angle), signed as the bow.</summary>
    private static double Segment(double chord, double bow)
    {
        if (bow == 0)
            return 0;
        double h = Math.Abs(bow), r = CircularSegment.Radius(chord, h), angle = CircularSegment.Angle(chord, h);
        return Math.Sign(bow) * r * r / 2 * (angle - Math.Sin(angle));
    }
}
