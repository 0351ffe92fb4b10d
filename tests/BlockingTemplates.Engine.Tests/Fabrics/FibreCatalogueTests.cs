using BlockingTemplates.Engine.Fabrics;

namespace BlockingTemplates.Engine.Tests.Fabrics;

public class FibreCatalogueTests
{
    [Fact]
    public void Every_fibre_has_a_name_of_its_own_and_a_source()
    {
        Assert.True(FibreCatalogue.All.Count >= 12);
        Assert.Equal(FibreCatalogue.All.Count, FibreCatalogue.All.Select(f => f.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(FibreCatalogue.All, f => Assert.NotEmpty(f.Source));
    }

    [Fact]
    public void A_fibre_is_found_in_any_case()
    {
        Assert.Equal("superwash wool", FibreCatalogue.Find(" Superwash Wool ")?.Name);
        Assert.Null(FibreCatalogue.Find("unobtainium"));
        Assert.Equal("alpaca", FibreCatalogue.Nearest("alpacca"));
    }

    // ISO 3758:2012 (quoted second-hand): wool, silk, polyester, viscose two dots with steam; acrylic and nylon one dot, no steam.
    [Theory]
    [InlineData("wool", true)]
    [InlineData("silk", true)]
    [InlineData("viscose", true)]
    [InlineData("polyester", true)]
    [InlineData("acrylic", false)]
    [InlineData("nylon", false)]
    public void Steam_is_allowed_where_the_care_symbols_allow_it(string name, bool allowed) =>
        Assert.Equal(allowed, FibreCatalogue.Find(name)!.SteamAllowed);

    [Fact]
    public void An_unknown_fibre_bears_no_more_than_any_known_one()
    {
        var unknown = FibreCatalogue.MostDelicate("unobtainium");
        Assert.Equal("unobtainium", unknown.Name);
        Assert.All(FibreCatalogue.All, f =>
        {
            Assert.True(f.SteamAllowed || !unknown.SteamAllowed);
            Assert.True(f.TakesWetBlock || !unknown.TakesWetBlock);
            Assert.True(!f.HeatSensitive || unknown.HeatSensitive);
            Assert.True(!f.GrowsWhenWet || unknown.GrowsWhenWet);
            Assert.True(!f.WeakerWhenWet || unknown.WeakerWhenWet);
        });
    }

    [Theory]
    [InlineData(CareLabel.NoIron, true)]
    [InlineData(CareLabel.NoSteam, true)]
    [InlineData(CareLabel.OneDot, true)]
    [InlineData(CareLabel.TwoDots, false)]
    [InlineData(CareLabel.ThreeDots, false)]
    public void One_dot_and_a_crossed_out_iron_forbid_steam(CareLabel label, bool forbids) =>
        Assert.Equal(forbids, new SetSettings(null, label).LabelForbidsSteam);
}
