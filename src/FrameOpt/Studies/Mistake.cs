namespace FrameOpt.Studies;

/// <summary>Something a user has to mend in a file: where, what, and how.</summary>
/// <param name="File">Name of the file, without its folder.</param>
/// <param name="Line">From 1; 0 when the whole file is meant.</param>
/// <param name="Column">From 1; 0 when the whole file is meant.</param>
/// <param name="Found">What stands there, shortened; may be empty.</param>
/// <param name="What">What is wrong with it: a sentence.</param>
/// <param name="Mend">What to write or do: a sentence.</param>
public sealed record Mistake(string File, int Line, int Column, string Found, string What, string Mend)
{
    /// <summary>All of it in one paragraph.</summary>
    public string Text
    {
        get
        {
            var place = Line > 0 ? FormattableString.Invariant($"{File} line {Line}, column {Column}: ") : $"{File}: ";
            var found = Found.Length > 0 ? $"`{Found}`: " : "";
            return $"{place}{found}{What} {Mend}".TrimEnd();
        }
    }
}
