using System.Text;

namespace FrameOpt.StudyFile.Syntax;

/// <summary>Looks at bytes for what is no text: another encoding, or text that was damaged on its way.</summary>
internal static class TextBytes
{
    private static readonly UTF8Encoding strictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The first line that is not in UTF-8, or null.</summary>
    public static int? NotUtf8(byte[] bytes)
    {
        try
        {
            strictUtf8.GetCharCount(bytes);
            return null;
        }
        catch (DecoderFallbackException problem)
        {
            return LineAt(bytes, Math.Clamp(problem.Index, 0, bytes.Length));
        }
    }

    /// <summary>The first line that cannot be what was written, and what is wrong with it; null when all of it can.</summary>
    public static (int Line, string What)? Problem(byte[] bytes)
    {
        if (NotUtf8(bytes) is { } line)
            return (line, "has a character that is not in UTF-8, such as an accented letter of an older encoding (Latin-1)");
        var text = bytes.AsSpan();
        // What a program writes in the place of a letter that it could not read.
        var replaced = text.IndexOf("\uFFFD"u8);
        if (replaced >= 0)
            return (LineAt(bytes, replaced), "has a replacement character (\uFFFD): a letter was lost before the file was saved");
        var control = Array.FindIndex(bytes, value => value < ' ' && value is not ((byte)'\t' or (byte)'\n' or (byte)'\r'));
        return control < 0 ? null : (LineAt(bytes, control), "has an invisible control character");
    }

    private static int LineAt(byte[] bytes, int index) => 1 + bytes.AsSpan(0, index).Count((byte)'\n');
}
