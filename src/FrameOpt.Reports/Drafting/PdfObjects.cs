using System.Globalization;
using System.Text;

namespace FrameOpt.Reports.Drafting;

/// <summary>The numbered objects of a PDF file and their table. No time and no random number goes in, so the same sheets give the
/// same bytes.</summary>
/// <remarks>Source: ISO 32000-1, 7.5, file structure.</remarks>
internal sealed class PdfObjects
{
    private readonly List<byte[]> bodies = [];

    /// <summary>A number for an object that is filled in later.</summary>
    public int Reserve()
    {
        bodies.Add([]);
        return bodies.Count;
    }

    /// <summary>Fills in an object.</summary>
    public void Fill(int number, string body) => bodies[number - 1] = Encoding.ASCII.GetBytes(body);

    /// <summary>Adds an object; gives its number.</summary>
    public int Add(string body)
    {
        var number = Reserve();
        Fill(number, body);
        return number;
    }

    /// <summary>Adds a stream; gives its number.</summary>
    /// <param name="keys">Of its dictionary, besides its length.</param>
    /// <param name="data">As it stands in the file.</param>
    public int AddStream(string keys, byte[] data)
    {
        bodies.Add([.. Encoding.ASCII.GetBytes($"<< {keys}/Length {data.Length} >>\nstream\n"), .. data, .. "\nendstream"u8]);
        return bodies.Count;
    }

    /// <summary>Writes the file.</summary>
    /// <param name="catalogue">Number of its root.</param>
    /// <param name="information">Number of title and producer.</param>
    /// <param name="stream">Left open.</param>
    public void Write(int catalogue, int information, Stream stream)
    {
        var position = 0L;
        void Append(ReadOnlySpan<byte> bytes)
        {
            stream.Write(bytes);
            position += bytes.Length;
        }

        void AppendText(string text) => Append(Encoding.Latin1.GetBytes(text));
        // The four letters beyond ASCII tell programs that copy the file that it is not text.
        AppendText("%PDF-1.7\n%âãÏÓ\n");
        var places = new List<long>();
        for (var i = 0; i < bodies.Count; i++)
        {
            places.Add(position);
            AppendText($"{i + 1} 0 obj\n");
            Append(bodies[i]);
            AppendText("\nendobj\n");
        }

        var table = position;
        AppendText($"xref\n0 {bodies.Count + 1}\n0000000000 65535 f \n");
        foreach (var place in places)
            AppendText(string.Create(CultureInfo.InvariantCulture, $"{place:D10} 00000 n \n"));
        AppendText($"trailer\n<< /Size {bodies.Count + 1} /Root {catalogue} 0 R /Info {information} 0 R >>\nstartxref\n{table}\n%%EOF\n");
    }
}
