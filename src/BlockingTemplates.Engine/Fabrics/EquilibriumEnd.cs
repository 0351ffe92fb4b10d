namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Why the search for an equilibrium ended.</summary>
public enum EquilibriumEnd
{
    /// <summary>Forces balance within the tolerance.</summary>
    Converged,

    /// <summary>As many steps were made as allowed.</summary>
    StepLimit,

    /// <summary>The time allowed is over.</summary>
    TimeLimit,

    /// <summary>No step brought the energy down: the cloth is held too little, or the numbers are at their end.</summary>
    NoWayDown,
}
