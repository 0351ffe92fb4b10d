using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace BlockingTemplates.Web.Guarding;

/// <summary>The host names by which the page may be asked: its own addresses, so that no foreign name can be pointed at it.</summary>
/// <param name="network">Addresses of this machine on the home network; empty where the page is not shared.</param>
internal sealed class OwnHosts(IReadOnlyList<string> network)
{
    private static readonly string[] Loopback = ["127.0.0.1", "localhost", "[::1]"];

    /// <summary>Addresses of this machine on the home network; empty where the page is not shared.</summary>
    public IReadOnlyList<string> Network => network;

    /// <summary>The host names of this machine.</summary>
    public static OwnHosts OfThisMachine(bool share) => new(share ? NetworkAddresses() : []);

    /// <summary>Whether a host name, with or without port, is one of them.</summary>
    public bool Has(string host) => Loopback.Contains(host, StringComparer.OrdinalIgnoreCase) || Network.Contains(host, StringComparer.OrdinalIgnoreCase);

    /// <summary>Whether a request comes from this machine and asks for it by a name of its own.</summary>
    public static bool IsLocal(IPAddress? from, string host) => from is not null && IPAddress.IsLoopback(from) && Loopback.Contains(host, StringComparer.OrdinalIgnoreCase);

    private static List<string> NetworkAddresses()
    {
        try
        {
            return
            [
                .. NetworkInterface.GetAllNetworkInterfaces()
                    .Where(n => n.OperationalStatus == OperationalStatus.Up && n.NetworkInterfaceType != NetworkInterfaceType.Loopback)
                    .SelectMany(n => n.GetIPProperties().UnicastAddresses)
                    .Select(a => a.Address)
                    .Where(a => a.AddressFamily == AddressFamily.InterNetwork && !IPAddress.IsLoopback(a))
                    .Select(a => a.ToString())
                    .Distinct(StringComparer.Ordinal),
            ];
        }
        catch (NetworkInformationException)
        {
            return [];
        }
    }
}
