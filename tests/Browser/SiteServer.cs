using System.Net;
using System.Net.Sockets;

namespace CareSheets.Tests.Browser;

/// <summary>Serves the files of a folder on this machine only, each under its own address and nothing else.</summary>
internal sealed class SiteServer : IDisposable
{
    private static readonly Dictionary<string, string> Types = new()
    {
        [".html"] = "text/html; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".svg"] = "image/svg+xml",
    };

    private readonly HttpListener _listener = new();
    private readonly string _folder;

    public SiteServer(string folder)
    {
        _folder = folder;
        using (var free = new TcpListener(IPAddress.Loopback, 0))
        {
            free.Start();
            Address = $"http://127.0.0.1:{((IPEndPoint)free.LocalEndpoint).Port}/";
        }
        _listener.Prefixes.Add(Address);
        _listener.Start();
        _ = AnswerAllAsync();
    }

    public string Address { get; }

    public void Dispose() => _listener.Close();

    private async Task AnswerAllAsync()
    {
        while (_listener.IsListening)
        {
            try
            {
                var call = await _listener.GetContextAsync();
                _ = Task.Run(() => AnswerIfStillAsked(call));
            }
            catch (Exception over) when (over is HttpListenerException or ObjectDisposedException)
            {
                // closed by Dispose, which ends the loop, or a call that broke before it was read
            }
        }
    }

    /// <summary>A browser may go away in the middle of an answer; that ends this answer and no other.</summary>
    private void AnswerIfStillAsked(HttpListenerContext call)
    {
        try
        {
            Answer(call);
        }
        catch (Exception gone) when (gone is HttpListenerException or IOException or ObjectDisposedException)
        {
            call.Response.Abort();
        }
    }

    private void Answer(HttpListenerContext call)
    {
        var path = Path.Combine(_folder, call.Request.Url!.AbsolutePath[1..]);
        using var response = call.Response;
        if (!File.Exists(path))
        {
            response.StatusCode = 404;
            return;
        }
        response.ContentType = Types.GetValueOrDefault(Path.GetExtension(path), "application/octet-stream");
        var bytes = File.ReadAllBytes(path);
        response.OutputStream.Write(bytes);
    }
}
