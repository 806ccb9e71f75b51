using System.Net;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.Cli;

/// <summary>Serves a folder and one study file to this machine only; tables that the study reads are dropped on the page. Nothing can be
/// changed through it.</summary>
/// <param name="folder">With index.html.</param>
/// <param name="study">Path of a study file, or null.</param>
internal sealed class WebFolderServer(string folder, string? study) : IDisposable
{
    private const string Policy =
        "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data: blob:; connect-src 'self'; "
            + "manifest-src 'self'; worker-src 'self'; base-uri 'self'; form-action 'none'; frame-ancestors 'none'";

    private const string OpenedFolder = "opened/";
    private const int LargestStudy = 1_000_000;

    private static readonly Dictionary<string, string> types = new(StringComparer.OrdinalIgnoreCase)
    {
        [".html"] = "text/html; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".wasm"] = "application/wasm",
        [".svg"] = "image/svg+xml",
        [".json"] = "application/json",
        [".webmanifest"] = "application/manifest+json",
        [".yaml"] = "text/plain; charset=utf-8",
    };

    private readonly HttpListener listener = new();
    private readonly string root = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)) + Path.DirectorySeparatorChar;

    /// <summary>Where to begin, once started: the page, and after it the study that it should open.</summary>
    public string Address { get; private set; } = "";

    /// <summary>Begins to serve.</summary>
    /// <param name="port">On 127.0.0.1.</param>
    /// <exception cref="HttpListenerException">The port cannot be used.</exception>
    public void Start(int port)
    {
        var host = $"http://127.0.0.1:{port}/";
        listener.Prefixes.Add(host);
        listener.Start();
        Address = study is null ? host : $"{host}#{OpenedFolder}{Uri.EscapeDataString(Path.GetFileName(study))}";
        _ = Task.Run(Serve);
    }

    /// <inheritdoc/>
    public void Dispose() => listener.Close();

    private async Task Serve()
    {
        while (listener.IsListening)
        {
            try
            {
                var context = await listener.GetContextAsync().ConfigureAwait(false);
                _ = Task.Run(() => Answer(context));
            }
            catch (Exception problem) when (problem is HttpListenerException or ObjectDisposedException)
            {
                return;
            }
        }
    }

    private void Answer(HttpListenerContext context)
    {
        try
        {
            var response = context.Response;
            response.Headers["Content-Security-Policy"] = Policy;
            response.Headers["X-Content-Type-Options"] = "nosniff";
            response.Headers["Referrer-Policy"] = "no-referrer";
            response.Headers["Cache-Control"] = "no-cache";
            var (status, type, bytes) = context.Request.HttpMethod is "GET" or "HEAD"
                ? Find(Uri.UnescapeDataString(context.Request.Url!.AbsolutePath).TrimStart('/')) : (405, "", []);
            response.StatusCode = status;
            response.ContentType = type.Length > 0 ? type : "application/octet-stream";
            response.ContentLength64 = bytes.Length;
            if (context.Request.HttpMethod != "HEAD")
                response.OutputStream.Write(bytes);
            response.Close();
        }
        catch (Exception problem) when (problem is HttpListenerException or IOException or ObjectDisposedException
            or UnauthorizedAccessException or InvalidOperationException)
        {
            // The browser went away, or the file did.
            context.Response.Abort();
        }
    }

    private (int Status, string Type, byte[] Bytes) Find(string path)
    {
        if (study is not null && path.StartsWith(OpenedFolder, StringComparison.Ordinal))
            return path == OpenedFolder + Path.GetFileName(study) && InputFile.ReadAll(study, LargestStudy) is { } text
                ? (200, types[".yaml"], text) : (404, "", []);
        var file = Path.GetFullPath(Path.Combine(root, path.Length == 0 ? "index.html" : path));
        return file.StartsWith(root, StringComparison.Ordinal) && File.Exists(file)
            ? (200, types.GetValueOrDefault(Path.GetExtension(file), ""), File.ReadAllBytes(file)) : (404, "", []);
    }
}
