namespace BlockingTemplates.Web.Answers;

/// <summary>How another screen gets in: addresses, the code, and the first address with the code as a QR code's path.</summary>
internal sealed record ShareAnswer(IReadOnlyList<string> Addresses, string Code, int QrSize, string QrPath);
