// SPDX-License-Identifier: GPL-3.0-or-later
// The kernel alone: against a plain loop in double precision on the same frequencies, and every instruction set against
// the others. Margins in closed form: inverse square law.
#include <cmath>
#include <cstdio>

#include "core/air/air.h"
#include "core/maps/ends.h"
#include "core/maps/kernel/kernel.h"
#include "core/maps/mapper.h"
#include "core/maps/run.h"
#include "hwy/targets.h"
#include "tests/support/random.h"
#include "tests/support/random_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
constexpr double kSameGrid = 0.001;  // dB between the kernel and the loop

void choose(std::int64_t target) {
    hwy::SetSupportedTargetsForTest(target);
    hwy::GetChosenTarget().Update(hwy::SupportedTargets());
}

/// Made-up drives.
void drive(double hz, std::size_t ends, Complex* drives) {
    for (std::size_t i = 0; i < ends; ++i) {
        const double k = static_cast<double>(i);
        drives[i] = std::polar(0.05 + 0.03 * k, -2.0 * kPi * hz * (0.001 + 0.0007 * k));
    }
}

/// A show's loudspeakers with made-up drives, heard by a cardioid at every cell: swept frequencies alone.
struct Swept {
    explicit Swept(const Show& from) : show(from), speed(speed_of_sound(show.air.temperature_c)) {
        grid = *maps::empty_grid(show, {MapKind::feedback, "", {.step = 0.5}});
        cells = maps::cells_of(grid);
        maps::set_height(cells, kHeight);
        const std::size_t count = show.loudspeakers.size();
        const auto made_up = [count](double hz, Complex* values) { drive(hz, count, values); };
        drives = maps::tabulate(maps::drives_by_frequency(count, made_up), {}, speed, {});
        drives.narrow_bins.clear();
        maps::Ends ends(show, grid, cells, maps::kSwept, store);
        std::vector<const Directivity*> directivities;
        for (const Loudspeaker& loudspeaker : show.loudspeakers) {
            ends.add_loudspeaker(loudspeaker, 0.5, nullptr);
            directivities.push_back(&loudspeaker.directivity);
        }
        air = ends.air();
        maps::DrivenField driven(ends.all(), directivities, drives, store, speed);
        driven.set_air(*air);
        driven.field.cell.frame = frame_of({30.0, -20.0, 0.0});
        driven.field.refine = false;
        maps::run_field(driven.field, cells, speed, {}, grid, {});
    }

    double plain_db(std::size_t cell) const {
        Input microphone;
        microphone.aim = {30.0, -20.0, 0.0};
        microphone.position = {cells.x[cell], cells.y[cell], kHeight};
        const Receiver receiver = receiver_of(microphone);
        const Surroundings around(show.air, show.stage.surfaces);
        double most = 0.0;
        std::vector<std::vector<Leg>> legs;
        for (const Loudspeaker& loudspeaker : show.loudspeakers)
            legs.push_back(legs_between(emitter_of(loudspeaker), receiver,
                                        planes_between(show.stage, loudspeaker.position, microphone.position)));
        for (int bin = 0; bin <= maps::kLastBin; ++bin) {
            const double hz =
                std::ldexp(static_cast<double>(drives.base_waves[static_cast<std::size_t>(bin % 48)]), bin / 48) *
                speed;
            std::vector<Complex> drives_here(show.loudspeakers.size());
            drive(hz, drives_here.size(), drives_here.data());
            Complex sum = 0.0;
            for (std::size_t l = 0; l < drives_here.size(); ++l)
                sum += drives_here[l] * transfer(legs[l], LoudspeakerSlice(show.loudspeakers[l].directivity, hz, speed),
                                                 receiver.pattern, {around, hz});
            most = std::max(most, std::norm(sum));
        }
        return -10.0 * std::log10(most);
    }

    static constexpr double kHeight = 1.37;
    Show show;
    double speed;
    MapGrid grid;
    maps::CellList cells;
    maps::TableStore store;
    maps::Drives drives;
    std::shared_ptr<const maps::AirRows> air;
};

Show with_directivity(std::uint64_t seed, const Directivity& directivity) {
    Show show = random_show(seed, stage_like());
    for (Loudspeaker& loudspeaker : show.loudspeakers) loudspeaker.directivity = directivity;
    return show;
}

double worst_error(const Swept& swept, std::uint64_t seed) {
    Random random(seed);
    double worst = 0.0;
    for (int i = 0; i < 8; ++i) {
        const auto cell = static_cast<std::size_t>(random.whole(0, static_cast<int>(swept.cells.index.size()) - 1));
        worst = std::max(
            worst, std::abs(static_cast<double>(swept.grid.value[swept.cells.index[cell]]) - swept.plain_db(cell)));
    }
    return worst;
}
}  // namespace

class Kernel : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void agrees_with_a_double_loop_on_the_same_frequencies() {
        Coverage wide, narrow;
        narrow.horizontal_deg = 60.0;
        narrow.vertical_deg = 20.0;
        narrow.width_m = 0.7;
        narrow.height_m = 0.25;
        double omni = 0.0, coverage = 0.0;
        for (std::uint64_t seed = 1; seed <= 12; ++seed) {
            omni = std::max(omni, worst_error(Swept(with_directivity(seed, Omni{})), seed));
            coverage = std::max(coverage, worst_error(Swept(with_directivity(seed, seed % 2 ? wide : narrow)), seed));
        }
        std::printf("kernel against a double loop: omni %.5f dB, coverage %.5f dB\n", omni, coverage);
        QVERIFY(omni < kSameGrid);
        QVERIFY(coverage < 0.02);  // tables between their rows
    }

    void every_instruction_set_gives_the_same() {
        for (const std::uint64_t seed : {2, 5, 9, 14}) {
            const Show show = random_show(seed, stage_like());
            choose(0);
            const Swept best(show);
            for (const std::int64_t target : hwy::SupportedAndGeneratedTargets()) {
                choose(target);
                const Swept other(show);
                choose(0);
                for (const std::uint32_t cell : best.cells.index)
                    if (!(std::abs(best.grid.value[cell] - other.grid.value[cell]) < 0.003f))
                        QFAIL(qPrintable(QString("%1: %2 dB and %3 dB")
                                             .arg(hwy::TargetName(target))
                                             .arg(other.grid.value[cell])
                                             .arg(best.grid.value[cell])));
            }
        }
        QVERIFY(hwy::SupportedAndGeneratedTargets().size() > 1);
    }

    /// One omni microphone, one omni loudspeaker, free air: margin = 20 log10 r + source level - send level at the
    /// lowest frequencies, where the air takes nothing (inverse square law; Long, Architectural Acoustics, 2006,
    /// eq. 2.47).
    void inverse_square_law() {
        Show show;
        show.stage.surfaces.floor.absorption = 1.0;
        Loudspeaker wedge;
        wedge.id = "w";
        wedge.position = {0.5, 1.0, 1.2};
        show.loudspeakers = {wedge};
        Input voice;
        voice.id = "v";
        voice.source_spl_db = 94.0;
        voice.transducer = Microphone{PatternName::omni, false, {}, {}};
        voice.position = {0.0, 0.0, 1.2};
        show.inputs = {voice};
        Mix mix;
        mix.id = "m";
        mix.loudspeakers = {"w"};
        mix.sends = {Send{"v", 100.0, {}}};
        show.mixes = {mix};
        const auto map = feedback_map(show, "v", {.step = 0.25});
        QVERIFY(map);
        for (int row = 0; row < map->rows; ++row)
            for (int column = 0; column < map->columns; ++column) {
                const double r = std::max(0.05, std::hypot(map->x(column) - 0.5, map->y(row) - 1.0));
                const double value = static_cast<double>(map->value[map->index(column, row)]);
                QVERIFY(std::abs(value - (20.0 * std::log10(r) - 6.0)) < 0.001);
                QVERIFY(map->worst_hz[map->index(column, row)] < 100.0f);
            }
    }
};

HOWLMAP_TEST(Kernel)
#include "test_kernel.moc"
