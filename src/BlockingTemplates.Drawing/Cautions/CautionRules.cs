using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Cautions;

/// <summary>The cautions that go with a plan, chosen by fibre, method, label and use of the guide.</summary>
/// <remarks>
/// Common practice of the trade, no single source, but for: the softening of EVA foam at 50 to 90 C (thermal-analysis
/// data sheets of ethylene-vinyl acetate) and the meaning of the ironing dots (ISO 3758:2012).
/// </remarks>
public static class CautionRules
{
    /// <summary>The cautions of a plan, the most general first.</summary>
    public static IReadOnlyList<string> For(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var project = plan.Project;
        return For(project.Fabric.Fibre, project.Set, project.Sheets.Use, plan.Pins.Wires.Count > 0, plan.Pins.Marks.Any(m => m.Bar is not null));
    }

    /// <summary>The cautions, the most general first.</summary>
    /// <param name="fibre">The fibre, or null.</param>
    /// <param name="set">How the shape is set.</param>
    /// <param name="use">How the guide is used.</param>
    /// <param name="hasWires">Whether wires hold an edge.</param>
    /// <param name="hasCombs">Whether combs hold an edge.</param>
    public static IReadOnlyList<string> For(Fibre? fibre, SetSettings set, GuideUse use, bool hasWires = false, bool hasCombs = false)
    {
        ArgumentNullException.ThrowIfNull(set);
        List<string> said =
        [
            "The care label of the yarn comes first, then local rules and trained practice; this guide does not replace them.",
            "Use only rustproof pins and wires (stainless steel or brass): rust stains stay for good.",
        ];
        said.AddRange(Heat(fibre, set));
        if (fibre is { GrowsWhenWet: true })
            said.Add("This fibre grows when wet: check the size again while it is damp, and let the pins hold it in rather than out.");
        if (fibre is { WeakerWhenWet: true })
            said.Add("This fibre is weaker when wet: carry it flat, do not let it hang, and pull gently.");
        if (fibre is { TakesWetBlock: false })
            said.Add("This fibre does not hold a shape it dried in as wool does: expect it to spring back.");
        said.Add("Before wetting, press a damp white cloth on a hidden place: if colour comes off, do not block it wet beside light colours.");
        said.Add(use switch
        {
            GuideUse.Prick => "Printed ink can run and stain: take the paper away before any damp cloth comes near it.",
            GuideUse.Film => "Printed ink can run and stain: the paper stays dry under the film, and the film whole; tape its joints, and wipe up water at pinholes.",
            GuideUse.Frame => "Printed ink can run and stain: the cut frame lies outside the cloth; keep it dry and keep the cloth off it.",
            _ => throw new ArgumentOutOfRangeException(nameof(use)),
        });
        said.Add("Pins stand up from the floor: keep children, animals and bare feet away until the last one is out, lean pins outward, wear shoes.");
        if (hasWires)
            said.Add("Wire ends are sharp and a bent wire springs back: keep the face away, hold both ends while you thread or draw one, cap the ends or bend them over.");
        if (hasCombs)
            said.Add("Combs have several prongs: take them by the bar, and lay them down with the prongs in foam, never prongs up.");
        said.Add("Count the pins out and count them back: a pin left in the cloth or on the floor hurts someone. A magnet helps; stainless pins answer to it only weakly.");
        return said;
    }

    private static IEnumerable<string> Heat(Fibre? fibre, SetSettings set)
    {
        var delicate = fibre is { SteamAllowed: false };
        if (set.LabelForbidsSteam)
            yield return "The care label forbids steam: set this piece by wetting or spraying and let it dry; use no steam and no iron on it.";
        else if (delicate)
            yield return "Steam changes this fibre for good (it goes limp): set the piece by wetting or spraying; no iron.";
        else
            yield return "Steam and irons burn: hold them 1 to 2.5 cm off the cloth, never resting on it, hands out of the steam. Pins and wires get hot. If you are burnt, cool with running water for 20 minutes.";
        if (fibre is { HeatSensitive: true } && !set.LabelForbidsSteam && !delicate)
            yield return "This fibre is harmed by a hot iron: no sole plate on it, and try steam on a swatch first.";
        if (!set.LabelForbidsSteam && !delicate)
            yield return "Never steam or iron on bare foam: it softens far below the heat of steam. Lay a folded towel or a padded board between, and take all paper away first.";
    }
}
