using System.Text;
using CsCheck;
using FrameOpt.Studies;
using FrameOpt.StudyFile;

namespace FrameOpt.Tests.StudyFile.Syntax;

/// <summary>Whatever happens to a file, reading it answers with a study or with mistakes.</summary>
public class DamagedFileTests
{
    private static readonly byte[] right = Encoding.UTF8.GetBytes(WorkedStudyText.Text);

    private static readonly string[] pieces =
        ["{", "}", "[", "]", ",", ":", ": ", "\"", "'", "-", "- ", "\n", "\n  ", "\t", "#", "&a ", "*a", "!x ", "|\n", ">\n", "? ", "%",
            "@", "~", "0", "-1 mm", "1e400", "\u0085", "\u2028", "é", "---\n", "...\n"];

    [Fact]
    public void Any_beginning_of_a_study_answers() =>
        Gen.Int[0, right.Length].Sample(length => Answers(right[..length]), iter: 300);

    [Fact]
    public void Any_changed_bytes_answer() =>
        Gen.Select(Gen.Int[0, right.Length - 1], Gen.Byte).Array[1, 4].Sample(
            changes =>
            {
                var bytes = right.ToArray();
                foreach (var (at, value) in changes)
                    bytes[at] = value;
                return Answers(bytes);
            },
            iter: 300);

    [Fact]
    public void Any_piece_put_in_anywhere_answers() =>
        Gen.Select(Gen.Int[0, WorkedStudyText.Text.Length], Gen.Int[0, pieces.Length - 1]).Array[1, 3].Sample(
            changes =>
            {
                var text = WorkedStudyText.Text;
                foreach (var (at, piece) in changes)
                    text = text.Insert(at, pieces[piece]);
                return Answers(Encoding.UTF8.GetBytes(text));
            },
            iter: 500);

    [Fact]
    public void Any_lines_left_out_answer() =>
        Gen.Int[0, WorkedStudyText.Text.Count(c => c == '\n') - 1].Array[1, 5].Sample(
            gone => Answers(Encoding.UTF8.GetBytes(string.Join('\n', WorkedStudyText.Text.Split('\n').Where((_, i) => !gone.Contains(i))))),
            iter: 300);

    private static bool Answers(byte[] bytes)
    {
        var reading = StudyReader.Parse(bytes, "study.yaml");
        return reading.Study is null == reading.Diagnostics.Count > 0 && reading.Diagnostics.All(diagnostic => diagnostic.Text.Length > 0);
    }
}
