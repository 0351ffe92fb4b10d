using System.Security.Cryptography;
using System.Text;

namespace BlockingTemplates.Web.Sharing;

/// <summary>The code that lets one more screen in: it works once, and a new one takes its place.</summary>
/// <remarks>40 bits from letters and figures that are not mistaken for each other; after too many wrong tries it is changed too.</remarks>
internal sealed class OneTimeCode
{
    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";
    private const int Length = 8;
    private const int MostWrong = 10;
    private readonly Lock _gate = new();
    private readonly HashSet<string> _passes = new(StringComparer.Ordinal);
    private string _code = Fresh();
    private int _wrong;

    /// <summary>The code now, in two groups of four.</summary>
    public string Code
    {
        get
        {
            lock (_gate)
                return $"{_code[..4]}-{_code[4..]}";
        }
    }

    /// <summary>A pass for a screen that says the right code, or null.</summary>
    /// <param name="said">What it says; small letters, spaces and hyphens do not matter.</param>
    public string? Enter(string said)
    {
        var plain = string.Concat(said.Where(char.IsAsciiLetterOrDigit).Take(Length + 1)).ToUpperInvariant();
        lock (_gate)
        {
            if (!IsSame(plain, _code))
            {
                if (++_wrong >= MostWrong)
                    Change();
                return null;
            }

            Change();
            var pass = RandomNumberGenerator.GetHexString(48, lowercase: true);
            _passes.Add(Hash(pass));
            return pass;
        }
    }

    /// <summary>Whether a pass was given to a screen.</summary>
    public bool Holds(string? pass)
    {
        if (string.IsNullOrEmpty(pass) || pass.Length > 100)
            return false;
        lock (_gate)
            return _passes.Contains(Hash(pass));
    }

    private static bool IsSame(string one, string other) => CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(one), Encoding.UTF8.GetBytes(other));

    private static string Hash(string pass) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(pass)));

    private static string Fresh() => RandomNumberGenerator.GetString(Letters, Length);

    private void Change() => (_code, _wrong) = (Fresh(), 0);
}
