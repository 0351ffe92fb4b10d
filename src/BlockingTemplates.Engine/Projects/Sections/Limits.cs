using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Engine.Projects.Sections;

/// <summary>What is taken for absurd in a project file: common practice, set wide.</summary>
internal static class Limits
{
    public const int Format = 1;
    public const int LongestTitle = 200;
    public const int LongestNotes = 10_000;
    public const int LongestName = 60;
    public const int LongestFileName = 100;
    public const int MostEdges = 1000;
    public const int MostPoints = 10_000;
    public const int MostStations = 1000;
    public const int MostSizes = 20;
    public const int MostPapers = 20;
    public const int MostCounted = 100_000;
    public const double LeastSeconds = 0.1;
    public const double MostSeconds = 3600;
    public const double MostGrain = 360;
    public const double LeastSpringBack = -0.3;
    public const double MostSpringBack = 0.5;
    public const double LeastWetChange = -0.4;
    public const double MostWetChange = 0.4;
    public const int MostStocks = 50;
    public const int MostSkipped = 50;
    public const int FewestProngs = 2;
    public const int MostProngs = 100;
    public const double LeastGrams = 0.5;
    public const double MostGrams = 20_000;

    /// <summary>The least and the most that a swatch's length after blocking is of the length before.</summary>
    public const double LeastSwatchGrowth = 0.5;
    public const double MostSwatchGrowth = 4;

    /// <summary>A finished size, a side, a tape along an edge, a diagonal.</summary>
    public static readonly LengthRange Size = new(Centimetres(1), Centimetres(2000));

    /// <summary>A bow, a coordinate, how far out an edge lies.</summary>
    public static readonly LengthRange Signed = new(Centimetres(-2000), Centimetres(2000));

    /// <summary>How far points stand out of their edge.</summary>
    public static readonly LengthRange PointDepth = new(Centimetres(0.1), Centimetres(100));

    /// <summary>A station along a chord.</summary>
    public static readonly LengthRange Station = new(Length.Zero, Centimetres(2000));

    public static readonly LengthRange Stitch = new(Centimetres(0.02), Centimetres(20));
    public static readonly LengthRange Swatch = new(Centimetres(1), Centimetres(200));
    public static readonly LengthRange StripLength = new(Centimetres(3), Centimetres(200));
    public static readonly LengthRange StripWidth = new(Centimetres(0.3), Centimetres(50));
    public static readonly LengthRange TapeReading = new(Centimetres(0.005), Centimetres(1));
    public static readonly LengthRange Scallop = new(Centimetres(0.01), Centimetres(5));
    public static readonly LengthRange Spacing = new(Centimetres(0.3), Centimetres(100));
    public static readonly LengthRange Mat = new(Centimetres(5), Centimetres(300));
    public static readonly LengthRange Floor = new(Centimetres(5), Centimetres(10_000));
    public static readonly LengthRange Border = new(Length.Zero, Centimetres(50));
    public static readonly LengthRange SeamClearance = new(Length.Zero, Centimetres(5));
    public static readonly LengthRange Margin = new(Length.Zero, Centimetres(5));
    public static readonly LengthRange Wire = new(Centimetres(10), Centimetres(2000));
    public static readonly LengthRange WireDiameter = new(Centimetres(0.03), Centimetres(0.6));
    public static readonly LengthRange WireOverlap = new(Centimetres(1), Centimetres(50));
    public static readonly LengthRange Comb = new(Centimetres(1), Centimetres(100));
    public static readonly LengthRange Bar = new(Centimetres(2), Centimetres(100));

    private static Length Centimetres(double value) => Length.FromCentimetres(value);
}
