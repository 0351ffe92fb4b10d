using System.Text.RegularExpressions;
using System.Xml.Linq;
using BlockingTemplates.Reference.Tests.Planning;

namespace BlockingTemplates.Reference.Tests.House;

// What may know of what.
public class ArrowsTests
{
    private const string Own = "BlockingTemplates.";

    // Each project with those it may use; whoever adds a project adds its arrows here.
    private static readonly Dictionary<string, string[]> Projects = new()
    {
        ["Engine"] = [],
        ["Drawing"] = ["Engine"],
        ["Output"] = ["Engine", "Drawing"],
        ["Web"] = ["Engine", "Drawing", "Output"],
        ["Cli"] = ["Engine", "Drawing", "Output", "Web"],
    };

    // Inside Engine a folder uses only those before it; files beside the folders use all.
    private static readonly string[] EngineFolders = ["Measure", "Shapes", "Fabrics", "Pieces", "Pins", "Mats", "Sheets", "Projects"];

    [Fact]
    public void Projects_refer_only_to_those_before_them()
    {
        var files = Directory.GetFiles(Repository.Sources, "*.csproj", SearchOption.AllDirectories);
        Assert.Equal(Projects.Keys.Order(), files.Select(f => Path.GetFileNameWithoutExtension(f)[Own.Length..]).Order());
        foreach (var file in files)
        {
            var allowed = Projects[Path.GetFileNameWithoutExtension(file)[Own.Length..]];
            var named = XDocument.Load(file).Descendants("ProjectReference").Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/'))[Own.Length..]);
            Assert.Subset(allowed.ToHashSet(), named.ToHashSet());
        }
    }

    [Fact]
    public void Sources_name_only_the_projects_before_theirs()
    {
        Assert.True(SourceFile.All.Count > 150);
        foreach (var file in SourceFile.All)
        {
            var project = file.Project[Own.Length..];
            var named = Regex.Matches(file.Words, @"\bBlockingTemplates\.(\w+)").Select(m => m.Groups[1].Value).ToHashSet();
            Assert.True(named.IsSubsetOf([project, .. Projects[project]]), $"{file.Path} names {string.Join(", ", named)}");
        }
    }

    [Fact]
    public void Inside_Engine_a_folder_uses_only_the_folders_before_it()
    {
        var engine = SourceFile.All.Where(f => f.Project == "BlockingTemplates.Engine").ToList();
        Assert.Equal(EngineFolders.Append("").Order(), engine.Select(f => f.Folder).Distinct().Order());
        var ownTypes = engine.ToLookup(f => f.Folder, f => f.PublicTypes);
        foreach (var file in engine.Where(f => f.Folder.Length > 0))
        {
            var place = Array.IndexOf(EngineFolders, file.Folder);
            var named = Regex.Matches(file.Words, @"(?<![\w.])(?:BlockingTemplates\.)?Engine\.(\w+)\b").Concat(Regex.Matches(file.Words, @"BlockingTemplates\.Engine\.(\w+)")).Select(m => m.Groups[1].Value).Where(n => EngineFolders.Contains(n));
            foreach (var folder in named)
                Assert.True(Array.IndexOf(EngineFolders, folder) <= place, $"{file.Path} uses {folder}");

            // The stages' joint files stand in the parent namespace, which a folder sees without saying so.
            foreach (var type in ownTypes[""].SelectMany(t => t))
                Assert.DoesNotMatch($@"(?<![\w.]){type}\.\w+\(|new {type}\(|\b{type} \w+[,)]", file.Words);
        }
    }

    [Fact]
    public void Engine_reads_no_file_no_clock_and_no_network()
    {
        foreach (var file in SourceFile.All.Where(f => f.Project == "BlockingTemplates.Engine"))
            Assert.DoesNotMatch(@"\bFile\.|\bDirectory\.|\bFileStream\b|\bFileInfo\b|\bEnvironment\.|\bConsole\.|\bHttpClient\b|\bStopwatch\b", file.Words);
    }

    [Theory]
    [InlineData("Pages")]
    [InlineData("Pdf")]
    [InlineData("Svg")]
    [InlineData("Png")]
    public void Writers_of_pages_have_never_heard_of_a_pin(string folder)
    {
        var files = SourceFile.All.Where(f => f.Project == "BlockingTemplates.Output" && f.Folder == folder).ToList();
        Assert.NotEmpty(files);
        foreach (var file in files)
        {
            Assert.DoesNotMatch(@"(?i:\b(pin|mark|mat|sheet of|guide|outline piece|fabric|plan)s?\b)|PinPlan|MatLayout|SheetLayout|\bMark[A-Z]", file.Code);
            Assert.DoesNotContain(file.Usings, u => u.StartsWith("BlockingTemplates.Engine", StringComparison.Ordinal) && u is not ("BlockingTemplates.Engine.Measure" or "BlockingTemplates.Engine.Shapes"));
            Assert.DoesNotContain(file.Usings, u => u.StartsWith("BlockingTemplates.Drawing", StringComparison.Ordinal) && u is not ("BlockingTemplates.Drawing.Pages" or "BlockingTemplates.Drawing.Text"));
        }
    }

    [Fact]
    public void Only_the_pdf_writer_knows_the_pdf_library_and_only_text_measures_and_the_png_writer_know_Skia()
    {
        foreach (var file in SourceFile.All)
        {
            Assert.True(!file.Words.Contains("PdfSharp", StringComparison.Ordinal) || (file.Project, file.Folder) is ("BlockingTemplates.Output", "Pdf"), file.Path);
            Assert.True(!file.Words.Contains("SkiaSharp", StringComparison.Ordinal) || (file.Project, file.Folder) is ("BlockingTemplates.Output", "Png") or ("BlockingTemplates.Drawing", "Text"), file.Path);
        }
    }
}
