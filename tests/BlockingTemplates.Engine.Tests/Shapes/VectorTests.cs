using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Tests.Shapes;

public class VectorTests
{
    [Fact]
    public void A_vector_can_be_written() => Assert.Equal("(1.5, -2)", new Vector(1.5, -2).ToString());
}
