using System.Net.Sockets;
using System.Text;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Browser;

/// <summary>Browsers drop requests at will, when a page is left early. The server must outlive that.</summary>
public sealed class SiteServerTests : IDisposable
{
    private const int LargerThanAnyBufferOfSockets = 32_000_000;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("caresheets-served-");

    [Fact]
    public async Task A_browser_that_goes_away_in_the_middle_of_an_answer_leaves_the_server_answering()
    {
        File.WriteAllBytes(Path.Combine(_folder.FullName, "large.txt"), new byte[LargerThanAnyBufferOfSockets]);
        File.WriteAllText(Path.Combine(_folder.FullName, "small.txt"), "still here");
        using var server = new SiteServer(_folder.FullName);
        for (var i = 0; i < 5; i++)
            await AskAndLeave(new Uri(server.Address));
        using var client = new HttpClient { Timeout = Patience };
        Assert.Equal("still here", await client.GetStringAsync(new Uri(server.Address + "small.txt")));
    }

    public void Dispose() => _folder.Delete(recursive: true);

    /// <summary>Takes the first bytes of the answer, so that it is being written, and resets the connection.</summary>
    private static async Task AskAndLeave(Uri server)
    {
        using var socket = new Socket(SocketType.Stream, ProtocolType.Tcp) { LingerState = new(true, 0) };
        await socket.ConnectAsync(server.Host, server.Port);
        await socket.SendAsync(Encoding.ASCII.GetBytes($"GET /large.txt HTTP/1.1\r\nHost: {server.Authority}\r\n\r\n"));
        await socket.ReceiveAsync(new byte[1000]).WaitAsync(Patience);
    }
}
