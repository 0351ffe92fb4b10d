using System.Text;
using System.Text.RegularExpressions;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Engine.Sheets;
using BlockingTemplates.Reference.Tests.Planning;

namespace BlockingTemplates.Reference.Tests.Texts;

public partial class StripsInReadmeTests
{
    [Fact]
    public void The_readmes_swatch_and_strips_say_what_the_readme_says_of_them()
    {
        var readme = File.ReadAllText(Path.Combine(Repository.Root, "README.md"));
        var block = FencedBlock().Matches(readme).Select(m => m.Groups[1].Value).Single(b => b.Contains("\"strips\":", StringComparison.Ordinal));
        var text = $"{{ \"units\": \"cm\", \"piece\": {{ \"shape\": \"square\", \"finished\": {{ \"side\": 40 }} }}, {block} }}";
        var reading = new ProjectReader(PieceKinds.All, PaperCatalogue.Find, [.. PaperCatalogue.All.Select(p => p.Name)]).Read(Encoding.UTF8.GetBytes(text));
        Assert.Empty(reading.Findings.Problems);
        Assert.Empty(reading.Findings.Notes);
        var fabric = reading.Project!.Fabric;
        Assert.Contains($"> {ClothMaterials.Of(fabric).Told}", readme, StringComparison.Ordinal);
        Assert.Contains($"> {ClothMaterials.Of(fabric with { Strips = null }).Told}", readme, StringComparison.Ordinal);
    }

    [GeneratedRegex("```jsonc\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex FencedBlock();
}
