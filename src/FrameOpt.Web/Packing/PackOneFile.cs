using System;
using System.Collections.Generic;
using System.IO;
using System.IO.Compression;
using System.Linq;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Build.Framework;
using Microsoft.Build.Utilities;

namespace FrameOpt.Web.Packing;

/// <summary>Packs a published folder into one HTML file that starts from a disk without a network: style and scripts stand in the page,
/// everything else as base64 of gzip in blocks that boot.js unpacks. Compiled by the build (FrameOpt.Web.csproj), not into the
/// application.</summary>
public sealed class PackOneFile : Task
{
    private const string Policy =
        "default-src 'none'; script-src {0} blob: 'wasm-unsafe-eval'; style-src {1}; img-src data: blob:; connect-src 'none'; worker-src blob:; "
        + "base-uri 'none'; form-action 'none'";

    /// <summary>The published wwwroot.</summary>
    [Required]
    public string Folder { get; set; } = "";

    /// <summary>The file to write.</summary>
    [Required]
    public string File { get; set; } = "";

    /// <inheritdoc/>
    public override bool Execute()
    {
        Folder = Path.GetFullPath(Folder);
        RemoveLeftovers();
        var scripts = new List<string>();
        var styles = new List<string>();
        var page = Text("index.html");
        page = Regex.Replace(page, @"<link rel=""stylesheet"" href=""([^""]+)""\s*/?>", match =>
            $"<style>{Noted(styles, Text(match.Groups[1].Value))}</style>");
        page = Regex.Replace(page, @"\s*<link rel=""(?:manifest|icon)""[^>]*>", "");
        page = Regex.Replace(page, @"\s*<base [^>]*>", "");
        page = Regex.Replace(page, @"<script src=""([^""]+)""([^>]*)></script>", match =>
            $"<script{match.Groups[2].Value}>{Noted(scripts, Script(match.Groups[1].Value))}</script>");
        page = Regex.Replace(page, @"content=""default-src[^""]*""", $"content=\"{string.Format(Policy, Hashes(scripts), Hashes(styles))}\"");
        page = page.Replace("<!-- packed files -->", string.Join("\n", Blocks()));
        System.IO.File.WriteAllText(File, page, new UTF8Encoding(false));
        Log.LogMessage(MessageImportance.High, $"{File}: {new FileInfo(File).Length / 1e6:0.0} MB");
        return true;
    }

    /// <summary>Names carry checksums: what an earlier publish left in the folder would be packed and served as well.</summary>
    private void RemoveLeftovers()
    {
        var start = Text("_framework/dotnet.js");
        var framework = new DirectoryInfo(Path.Combine(Folder, "_framework"));
        foreach (var file in framework.GetFiles().Where(file => file.Name is not ("dotnet.js" or "blazor.webassembly.js")))
        {
            if (!start.Contains($"\"{file.Name}\""))
                file.Delete();
        }

        foreach (var folder in framework.GetDirectories())
            folder.Delete(recursive: true);
    }

    /// <summary>The modules of the runtime as they are, because the page must know their address at once; all else compressed.</summary>
    private IEnumerable<string> Blocks() => Directory.GetFiles(Path.Combine(Folder, "_framework"))
        .OrderBy(path => path, StringComparer.Ordinal).Append(Path.Combine(Folder, "worker.js"))
        .Where(path => Path.GetExtension(path) is ".js" or ".wasm" or ".dat" && Path.GetFileName(path) != "blazor.webassembly.js")
        .Select(path => Path.GetExtension(path) == ".js"
            ? $"<script type=\"text/plain\" data-file=\"{Path.GetFileName(path)}\">"
                + Script(path).Replace("import.meta.url", "\"https://packed.invalid/\"") + "</script>"
            : $"<script type=\"text/plain\" data-file=\"{Path.GetFileName(path)}\">{Packed(path)}</script>");

    private static string Packed(string path)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Optimal))
        using (var source = System.IO.File.OpenRead(path))
            source.CopyTo(gzip);
        return Convert.ToBase64String(packed.ToArray());
    }

    private string Text(string name) => System.IO.File.ReadAllText(Path.Combine(Folder, name)).Replace("\r\n", "\n");

    /// <summary>A script with nothing in it that would end its element.</summary>
    private string Script(string name) => Text(name).Replace("</script", "<\\/script").Replace("<!--", "<\\!--");

    private static string Noted(List<string> seen, string text)
    {
        seen.Add(text);
        return text;
    }

    private static string Hashes(IEnumerable<string> texts) => string.Join(" ", texts.Select(text =>
    {
        using var sha = SHA256.Create();
        return $"'sha256-{Convert.ToBase64String(sha.ComputeHash(Encoding.UTF8.GetBytes(text)))}'";
    }));
}
