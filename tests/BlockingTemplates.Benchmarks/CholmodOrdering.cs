namespace BlockingTemplates.Benchmarks;

/// <summary>Ways in which CHOLMOD finds an order of elimination; the numbers are those of its header.</summary>
internal enum CholmodOrdering
{
    /// <summary>Approximate minimum degree.</summary>
    Amd = 2,

    /// <summary>METIS' nested dissection.</summary>
    Metis = 3,

    /// <summary>CHOLMOD's own nested dissection.</summary>
    Nesdis = 4,
}
