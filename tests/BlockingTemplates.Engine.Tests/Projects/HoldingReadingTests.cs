using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins.Combs;
using BlockingTemplates.Engine.Pins.Wires;

namespace BlockingTemplates.Engine.Tests.Projects;

public class HoldingReadingTests
{
    [Theory]
    [InlineData("wire", Holding.Wire)]
    [InlineData("comb", Holding.Comb)]
    public void An_edge_may_be_held_by_a_wire_or_by_combs(string word, Holding hold)
    {
        var project = Reading.Clean(Reading.Triangle(piece: $", \"edges\": {{ \"top\": {{ \"count\": 9, \"hold\": \"{word}\" }} }}"));
        Assert.Equal(new EdgeTreatment(9, CountedIn.Stitches, hold), project.Treatment("top"));
    }

    [Fact]
    public void Wires_of_several_kinds_are_read_with_what_is_not_said_taken_from_the_section()
    {
        var wires = Reading.Clean(Reading.Triangle(
            ", \"wires\": { \"diameter\": \"2 mm\", \"overlap\": 4, \"every\": 2, \"owned\": [{ \"length\": 90, \"count\": 4 }, { \"length\": \"1 m\", \"kind\": \"flexible\" }] }")).Pins.Wires;
        WireForm stiff = new(WireKind.Stiff, Length.FromMillimetres(2));
        Assert.Equal(stiff, wires.Form);
        Assert.Equal((Length.FromCentimetres(4), 2), (wires.Overlap, wires.Every));
        Assert.Equal([new(Length.FromCentimetres(90), 4, stiff), new(Length.FromMillimetres(1000), 1, new(WireKind.Flexible, WireForm.UsualFlexible))], wires.Owned!);
    }

    [Fact]
    public void Nothing_said_of_wires_and_combs_means_the_usual_ones()
    {
        var pins = Reading.Clean(Reading.Triangle()).Pins;
        Assert.Equal((WireSettings.Default, CombSettings.Default), (pins.Wires, pins.Combs));
        Assert.Equal(new CombSettings(6, Length.FromMillimetres(55), 12), Reading.Clean(Reading.Triangle(", \"combs\": { \"prongs\": 6, \"length\": \"55 mm\", \"owned\": 12 }")).Pins.Combs);
    }

    [Fact]
    public void The_change_when_wet_is_one_fraction_or_two()
    {
        Assert.Equal(new WetChange(-0.04, -0.04), Reading.Clean(Reading.Triangle(", \"fabric\": { \"wetChange\": -0.04 }")).Fabric.WetChange);
        Assert.Equal(new WetChange(-0.04, 0.02), Reading.Clean(Reading.Triangle(", \"fabric\": { \"measured\": \"dry\", \"wetChange\": { \"along\": -0.04, \"across\": 0.02 } }")).Fabric.WetChange);
        Assert.Null(Reading.Clean(Reading.Triangle(", \"fabric\": { \"wetChange\": null }")).Fabric.WetChange);
        Assert.Null(Reading.Clean(Reading.Triangle(", \"fabric\": { \"measured\": \"dry\", \"wetChange\": { \"along\": null, \"across\": null } }")).Fabric.WetChange);
    }

    [Theory]
    [InlineData("\"wires\": 3", "wires", "expected is the wires")]
    [InlineData("\"wires\": { \"owned\": 3 }", "wires.owned", "expected is a list of wires by length")]
    [InlineData("\"wires\": { \"owned\": [{ \"count\": 3 }] }", "wires.owned[0].length", "\"length\" is missing")]
    [InlineData("\"wires\": { \"owned\": [{ \"length\": 2 }] }", "wires.owned[0].length", "is less than 10 cm")]
    [InlineData("\"wires\": { \"kind\": \"soft\" }", "wires.kind", "is none of the words")]
    [InlineData("\"wires\": { \"diameter\": 9 }", "wires.diameter", "is more than 0.6 cm")]
    [InlineData("\"wires\": { \"every\": 0 }", "wires.every", "too small")]
    [InlineData("\"combs\": { \"prongs\": 1 }", "combs.prongs", "too small")]
    [InlineData("\"combs\": { \"length\": \"2 mm\" }", "combs.length", "is less than 1 cm")]
    [InlineData("\"fabric\": { \"wetChange\": -0.9 }", "fabric.wetChange", "too small")]
    [InlineData("\"fabric\": { \"wetChange\": { \"along\": 3 } }", "fabric.wetChange.along", "too great")]
    [InlineData("\"fabric\": { \"wetChange\": \"-5 %\" }", "fabric.wetChange", "expected is a fraction")]
    public void Wires_combs_and_wet_changes_not_as_they_should_be_are_problems(string more, string path, string what) =>
        Reading.IsSingle(Reading.Triangle(", " + more), path, what, "Write");
}
