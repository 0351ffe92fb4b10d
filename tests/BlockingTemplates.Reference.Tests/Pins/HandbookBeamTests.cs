using BlockingTemplates.Engine.Pins.Wires;

namespace BlockingTemplates.Reference.Tests.Pins;

// Tables of beams under an even load w, as they stand in many handbooks.
public class HandbookBeamTests
{
    // M. R. Lindeburg, Civil Engineering Reference Manual, 15th ed., beam on three supports: 0.00541 w L^4 / EI at 0.4215 L;
    // moment at the middle support w L^2 / 8, greatest in the span 9 / 128 w L^2. Seen as quoted on a web page.
    [Fact]
    public void Two_equal_spans()
    {
        var beam = new ContinuousBeam(1, [1, 1], 1);
        Assert.Equal(0.00541, beam.SagAt(0, 0.4215), 1e-5);
        Assert.Equal(0.4215, Deepest(beam, 0), 2e-3);
        Assert.Equal(1.0 / 8, beam.SupportMoments[1], 1e-12);
        Assert.Equal(9.0 / 128, SpanMoment(beam, 0), 1e-5);
    }

    // Three equal spans: 0.0069 w L^4 / EI at 0.446 L from the ends; moments 0.100 w L^2 over the supports, 0.080 in the end
    // spans, 0.025 in the middle one (tables of continuous beams, as in the AISC manual; seen as quoted on a web page).
    [Fact]
    public void Three_equal_spans()
    {
        var beam = new ContinuousBeam(1, [1, 1, 1], 1);
        Assert.Equal(0.0069, beam.SagAt(0, 0.446), 5e-5);
        Assert.Equal(0.446, Deepest(beam, 0), 2e-3);
        Assert.Equal(0.1, beam.SupportMoments[1], 1e-12);
        Assert.Equal(0.1, beam.SupportMoments[2], 1e-12);
        Assert.Equal(0.08, SpanMoment(beam, 0), 1e-4);
        Assert.Equal(0.025, SpanMoment(beam, 1), 1e-4);
    }

    // One span on two supports 5 / 384; an inner span of many as if built in at both ends: 1 / 384 w L^4 / EI (Machinery's
    // Handbook, beam formulas). Four equal spans: 0.0065 at 0.440 L (AISC, from memory).
    [Fact]
    public void One_span_many_spans_and_four()
    {
        Assert.Equal(5.0 / 384, new ContinuousBeam(1, [1], 1).SagAt(0, 0.5), 1e-12);
        Assert.Equal(1.0 / 384, new ContinuousBeam(1, [.. Enumerable.Repeat(1.0, 41)], 1).SagAt(20, 0.5), 1e-9);
        Assert.Equal(0.0065, new ContinuousBeam(1, [1, 1, 1, 1], 1).SagAt(0, 0.44), 5e-5);
    }

    private static double Deepest(ContinuousBeam beam, int span) => Enumerable.Range(1, 999).MaxBy(k => beam.SagAt(span, k / 1000.0)) / 1000.0;

    /// <summary>Greatest bending moment in a span by the sag's second difference, stiffness 1.</summary>
    private static double SpanMoment(ContinuousBeam beam, int span)
    {
        const double h = 1e-3;
        return Enumerable.Range(2, 997).Max(k => -(beam.SagAt(span, (k + 1) * h) - (2 * beam.SagAt(span, k * h)) + beam.SagAt(span, (k - 1) * h)) / (h * h));
    }
}
