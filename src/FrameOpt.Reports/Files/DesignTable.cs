using CsvHelper;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Files;

/// <summary>designs.csv: the whole front, for any program.</summary>
public static class DesignTable
{
    /// <summary>Writes one row for each design, UTF-8, units in the header, plain decimal numbers, nothing where there is no
    /// number.</summary>
    /// <param name="report">The run.</param>
    /// <param name="stream">Left open.</param>
    public static void Write(RunReport report, Stream stream)
    {
        using var csv = CsvWriter.Create(stream, CsvWriterOptions.Default with { NewLine = "\n" }, leaveOpen: true);
        var columns = FrontColumns.Of(report.Result.Study);
        foreach (var column in columns)
            csv.WriteField(TextSanitizer.ForCsv(column.Header));
        csv.EndRecord();
        for (var i = 0; i < report.Result.Front.Count; i++)
        {
            foreach (var column in columns)
            {
                var value = column.Value(report.Result.Front[i], report.FrontEvaluations[i]);
                csv.WriteField(double.IsFinite(value) ? PlainNumber.Text(value) : "");
            }

            csv.EndRecord();
        }
    }
}
