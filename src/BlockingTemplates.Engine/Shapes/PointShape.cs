namespace BlockingTemplates.Engine.Shapes;

/// <summary>What the points of an edge look like.</summary>
public enum PointShape
{
    /// <summary>Straight from valley to tip and down again.</summary>
    Point,

    /// <summary>A round arc from valley to valley.</summary>
    Scallop,
}
