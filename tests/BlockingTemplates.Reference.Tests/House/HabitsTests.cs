using System.Text.RegularExpressions;

namespace BlockingTemplates.Reference.Tests.House;

// How the sources are written. The compiler checks the rest: docs on every public member, nullable, formatting.
public class HabitsTests
{
    private const int MostLines = 250;

    [Fact]
    public void Millimetres_of_an_inch_and_points_stand_in_one_file()
    {
        const string place = "BlockingTemplates.Engine/Measure/Length.cs";
        foreach (var file in SourceFile.All)
            Assert.True(file.Path == place || !Regex.IsMatch(file.Code, @"(?<![\w.])(?:25\.4|2\.54|0\.0254|72|72\.0|0\.3937\d*)(?![\w.])"), $"{file.Path} has a number of its own for inches or points.");
        var length = SourceFile.All.Single(f => f.Path == place);
        Assert.Single(Regex.Matches(length.Words, @"(?<![\w.])25\.4(?![\w.])"));
        Assert.Single(Regex.Matches(length.Words, @"(?<![\w.])72(?:\.0)?(?![\w.])"));
    }

    [Fact]
    public void No_file_is_longer_than_250_lines() =>
        Assert.All(SourceFile.All, f => Assert.True(f.Lines.Length - 1 <= MostLines, $"{f.Path} has {f.Lines.Length - 1} lines."));

    [Fact]
    public void A_file_holds_one_public_type_of_its_own_name()
    {
        foreach (var file in SourceFile.All)
        {
            Assert.True(file.PublicTypes.Count <= 1, $"{file.Path}: {string.Join(", ", file.PublicTypes)}");
            if (file.PublicTypes is [var name])
                Assert.Equal(Path.GetFileNameWithoutExtension(file.Path), name);
        }

        Assert.True(SourceFile.All.Sum(f => f.PublicTypes.Count) > 100);
    }

    [Fact]
    public void Types_are_named_for_what_they_are()
    {
        foreach (var file in SourceFile.All)
        {
            foreach (var name in file.TypeNames)
                Assert.False(Regex.IsMatch(name, "(Manager|Helper|Helpers|Util|Utils|Utility|Base|Info|Data)$"), $"{file.Path}: {name}");
        }
    }

    [Fact]
    public void Nothing_depends_on_clock_chance_or_culture()
    {
        // The code that lets another screen in has to be by chance.
        const string byChance = "BlockingTemplates.Web/Sharing/OneTimeCode.cs";
        Assert.Contains(SourceFile.All, f => f.Path == byChance);
        foreach (var file in SourceFile.All.Where(f => f.Path != byChance))
        {
            Assert.DoesNotMatch(@"DateTime(Offset)?\.(Utc)?(Now|Today)|TimeProvider|new Random\(\)|Random\.Shared|Guid\.NewGuid|RandomNumberGenerator|CurrentCulture|CurrentUICulture|InstalledUICulture", file.Words);
            Assert.DoesNotMatch(@"\.GetHashCode\(\)", file.Words);
        }
    }

    [Fact]
    public void Nothing_is_left_to_be_done() =>
        Assert.All(SourceFile.All, f => Assert.DoesNotMatch(@"NotImplementedException|\b(TODO|FIXME|HACK|XXX)\b", f.Text));

    [Fact]
    public void A_namespace_is_the_folder()
    {
        foreach (var file in SourceFile.All.Where(f => f.Words.Contains("namespace ", StringComparison.Ordinal)))
        {
            var folder = Path.GetDirectoryName(file.Path)!.Replace('\\', '/').Replace('/', '.');
            Assert.Equal(folder, Regex.Match(file.Words, @"^namespace ([\w.]+);", RegexOptions.Multiline).Groups[1].Value);
        }
    }

    [Fact]
    public void Every_public_type_has_a_doc()
    {
        foreach (var file in SourceFile.All)
        {
            for (var i = 0; i < file.Lines.Length; i++)
            {
                if (!Regex.IsMatch(file.Lines[i], @"^public .*\b(record|class|struct|interface|enum)\b"))
                    continue;
                var above = i - 1;
                while (above >= 0 && file.Lines[above].StartsWith('['))
                    above--;
                Assert.True(above >= 0 && file.Lines[above].StartsWith("///", StringComparison.Ordinal), $"{file.Path}, line {i + 1}");
            }
        }
    }
}
