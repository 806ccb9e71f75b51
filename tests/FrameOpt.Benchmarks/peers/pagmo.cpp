// The side of pagmo2 in the comparison of compare.sh: reads tasks.txt and the points of a folder, writes theirs.txt.
// A new kind of task is a function in kinds(): it prepares from the input's name, and gives what is timed.
#include <algorithm>
#include <chrono>
#include <cstdint>
#include <cstdio>
#include <fstream>
#include <functional>
#include <map>
#include <memory>
#include <stdexcept>
#include <string>
#include <tuple>
#include <vector>

#include <pagmo/algorithm.hpp>
#include <pagmo/algorithms/nsga2.hpp>
#include <pagmo/population.hpp>
#include <pagmo/problem.hpp>
#include <pagmo/problems/dtlz.hpp>
#include <pagmo/problems/zdt.hpp>
#include <pagmo/types.hpp>
#include <pagmo/utils/hypervolume.hpp>
#include <pagmo/utils/multi_objective.hpp>

using points_t = std::vector<pagmo::vector_double>;
using run_t = std::function<double()>;

static points_t read_points(const std::string &path)
{
    std::ifstream file(path, std::ios::binary);
    std::int64_t shape[2];
    file.read(reinterpret_cast<char *>(shape), sizeof shape);
    points_t points(shape[0], pagmo::vector_double(shape[1]));
    for (auto &point : points)
        file.read(reinterpret_cast<char *>(point.data()), shape[1] * sizeof(double));
    if (!file)
        throw std::runtime_error("cannot read " + path);
    return points;
}

static pagmo::vector_double reference(const points_t &points)
{
    return pagmo::vector_double(points[0].size(), 1.1);
}

// "zdt1-100-250": the problem, the population, the generations. Every run has the next seed; the check is the mean hypervolume so far.
static run_t search(const std::string &input)
{
    const auto first = input.find('-'), second = input.find('-', first + 1);
    const auto name = input.substr(0, first);
    const auto size = std::stoul(input.substr(first + 1, second - first - 1));
    const auto generations = static_cast<unsigned>(std::stoul(input.substr(second + 1)));
    const auto problem = name == "dtlz2" ? pagmo::problem{pagmo::dtlz(2, 12, 3)} : pagmo::problem{pagmo::zdt(name == "zdt3" ? 3 : 1, 30)};
    auto volumes = std::make_shared<std::vector<double>>();
    return [=] {
        const auto seed = static_cast<unsigned>(volumes->size() + 1);
        auto population = pagmo::algorithm{pagmo::nsga2(generations, 0.95, 10., 0.01, 50., seed)}.evolve(pagmo::population{problem, size, seed});
        points_t inside;
        for (const auto &point : population.get_f())
            if (std::all_of(point.begin(), point.end(), [](double value) { return value < 1.1; }))
                inside.push_back(point);
        volumes->push_back(inside.empty() ? 0 : pagmo::hypervolume(inside, false).compute(reference(inside)));
        double sum = 0;
        for (const auto volume : *volumes)
            sum += volume;
        return sum / volumes->size();
    };
}

static std::map<std::string, std::function<run_t(const std::string &folder, const std::string &input)>> kinds()
{
    return {
        {"sort", [](const std::string &folder, const std::string &input) -> run_t {
             return [points = read_points(folder + "/" + input)] {
                 return static_cast<double>(std::get<0>(pagmo::fast_non_dominated_sorting(points)).size());
             };
         }},
        {"volume", [](const std::string &folder, const std::string &input) -> run_t {
             return [points = read_points(folder + "/" + input)] {
                 return pagmo::hypervolume(points, false).compute(reference(points));
             };
         }},
        {"nsga2", [](const std::string &, const std::string &input) -> run_t { return search(input); }},
        {"least", [](const std::string &folder, const std::string &input) -> run_t {
             return [points = read_points(folder + "/" + input)] {
                 return static_cast<double>(pagmo::hypervolume(points, false).least_contributor(reference(points)));
             };
         }},
    };
}

static double median_seconds(const run_t &run, double &check)
{
    using clock = std::chrono::steady_clock;
    std::vector<double> times;
    double total = 0;
    check = run();
    while (times.size() < 9 || total < 0.5) {
        const auto start = clock::now();
        check = run();
        times.push_back(std::chrono::duration<double>(clock::now() - start).count());
        total += times.back();
    }
    std::sort(times.begin(), times.end());
    return times[times.size() / 2];
}

int main(int argc, char **argv)
{
    if (argc != 2)
        return 2;
    const std::string folder = argv[1];
    const auto known = kinds();
    std::ifstream tasks(folder + "/tasks.txt");
    std::FILE *out = std::fopen((folder + "/theirs.txt").c_str(), "w");
    for (std::string kind, input; tasks >> kind >> input;) {
        double check;
        const double seconds = median_seconds(known.at(kind)(folder, input), check);
        std::fprintf(out, "%s %s %.6E %.12E\n", kind.c_str(), input.c_str(), seconds, check);
    }
    std::fclose(out);
}
