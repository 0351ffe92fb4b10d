using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>How the guide is used, in four lines for each way; and how the piece is set.</summary>
public static class HowTo
{
    /// <summary>The four lines of a way of use.</summary>
    public static IReadOnlyList<string> Of(GuideUse use) => use switch
    {
        GuideUse.Prick =>
        [
            "Join the mats as the mat map shows. Tape the sheets as the taping map shows and lay the guide on the dry mats, its seams on theirs.",
            "Prick every cross through into the foam, or set a pin in it, in the order of the numbers; tick them off in the pin table.",
            "Take the paper away before anything damp comes near. Lay the piece where the lay line was, with the right number to each mark.",
            "Pin in the order of the numbers: round by round, each point to its mark. Let it dry until no spot feels cool. Count the pins back.",
        ],
        GuideUse.Film =>
        [
            "Join the mats as the mat map shows. Tape the sheets as the taping map shows, lay the guide on the dry mats, its seams on theirs.",
            "Cover it whole with clear film, taped at its joints and at the sides, so that the paper stays dry.",
            "Lay the damp piece on the lay line that shows through the film.",
            "Pin in the order of the numbers, through film and paper: round by round, each point to its mark. Let it dry until no spot feels cool. Count the pins back.",
        ],
        GuideUse.Frame =>
        [
            "Join the mats as the mat map shows. Tape the sheets as the taping map shows, then cut the inside away along the dash-dot line 5 mm outside the outline.",
            "Lay the frame on the dry mats, its seams on theirs, and tape it down at the outside.",
            "Lay the damp piece inside the frame; it touches no paper.",
            "Pin in the order of the numbers: each pin 5 mm in from its tick on the cut edge. Let it dry until no spot feels cool. Count the pins back.",
        ],
        _ => throw new ArgumentOutOfRangeException(nameof(use)),
    };

    /// <summary>How half a guide serves for the whole of a symmetric piece.</summary>
    public static IReadOnlyList<string> HalfGuide { get; } =
    [
        "Half a guide: it shows the right half, up to the heavy dash-dot spine line. Mark both ends of the spine line on the mats and prick this half through.",
        "Turn the taped paper over the spine line, its line on the marks you made, and prick the left half through the same holes.",
        "Each mark carries two numbers: the upper one holds on the right half. The outlined one is in mirror writing and holds on the left half: it reads the right way round through the turned paper.",
    ];

    /// <summary>The way of use in one word.</summary>
    public static string Name(GuideUse use) => use switch
    {
        GuideUse.Prick => "prick the marks",
        GuideUse.Film => "under clear film",
        GuideUse.Frame => "as a frame",
        _ => throw new ArgumentOutOfRangeException(nameof(use)),
    };

    /// <summary>How the piece is set by the method the maker chose, or null where none was chosen or the label forbids it.</summary>
    public static string? Setting(SetSettings set, Fibre? fibre)
    {
        ArgumentNullException.ThrowIfNull(set);
        return set.Method switch
        {
            SetMethod.Wet => "Set by wetting: soak 15 to 30 minutes in cool or lukewarm water, do not wring, press the water out in a towel, then pin.",
            SetMethod.Spray => "Set by spraying: pin the piece dry or barely damp, spray it evenly damp, press lightly with the hand, let it dry.",
            SetMethod.Steam when MaySteam(set, fibre) => "Set by steam: pin the piece dry over a towel or padded board, hold the steam 1 to 2.5 cm off, move it along, let it dry at least 30 minutes.",
            _ => null,
        };
    }

    /// <summary>Whether label and fibre let the plan offer steam.</summary>
    public static bool MaySteam(SetSettings set, Fibre? fibre)
    {
        ArgumentNullException.ThrowIfNull(set);
        return !set.LabelForbidsSteam && fibre is not { SteamAllowed: false };
    }
}
