// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/maps/scene.h"

#include "core/air/air.h"
#include "core/maps/grid.h"
#include "core/units/level.h"

namespace howlmap::bench {
namespace {
constexpr double kHearingHeight = 1.5;
constexpr double kRowsPerDegree = 4.0, kAirRowsPerMetre = 8.0;

Show make_show() {
    Show show;
    show.stage.outline = {{-5.95, 0.05}, {6.0, 0.05}, {6.0, 8.0}, {-5.95, 8.0}};
    show.stage.surfaces.floor.absorption = 0.1;
    show.stage.surfaces.back = Surface{10.0, 0.3, {}};
    show.stage.surfaces.front = Surface{-12.0, 0.5, {}};
    show.stage.surfaces.left = Surface{9.0, std::map<int, double>{{0, 0.1}, {7, 0.6}}, {}};
    show.stage.surfaces.right = Surface{-9.0, 0.4, {}};
    show.stage.surfaces.ceiling = Surface{7.0, 0.7, {}};
    for (int i = 0; i < 8; ++i) {
        Loudspeaker wedge;
        wedge.id = "w" + std::to_string(i);
        wedge.position = {-5.0 + 1.4 * i, 0.7 + 0.9 * (i % 3), 0.3};
        wedge.aim = {180.0 + 7.0 * i, 35.0, 0.0};
        Coverage coverage;  // as high as wide, so that the plain loops' tables over the angle hold for it
        coverage.horizontal_deg = coverage.vertical_deg = 70.0;
        coverage.width_m = coverage.height_m = 0.45;
        wedge.directivity = coverage;
        show.loudspeakers.push_back(wedge);
    }
    return show;
}

/// Drives of about the size and turning speed of a real stage's.
void drives_at(double hz, Complex* drives) {
    for (int i = 0; i < 8; ++i) drives[i] = std::polar(0.1 + 0.02 * i, -2.0 * kPi * hz * (0.002 + 0.0004 * i));
}

std::unique_ptr<maps::Ends> make_ends(const Show& show, const MapGrid& grid, const maps::CellList& cells,
                                      maps::TableStore& store) {
    auto ends = std::make_unique<maps::Ends>(show, grid, cells, maps::kSwept, store);
    for (const Loudspeaker& loudspeaker : show.loudspeakers) ends->add_loudspeaker(loudspeaker, 0.5, nullptr);
    return ends;
}
}  // namespace

Scene::Scene() : show(make_show()), speed(speed_of_sound(show.air.temperature_c)) {
    MapRequest request;
    request.options.step = 0.05;
    grid = *maps::empty_grid(show, request);
    cells = maps::cells_of(grid);
    request.options.coarse = 4;
    coarse_grid = *maps::empty_grid(show, request);
    coarse_cells = maps::cells_of(coarse_grid);
    maps::set_height(cells, kHearingHeight);
    maps::set_height(coarse_cells, kHearingHeight);
    drives = maps::tabulate(maps::drives_by_frequency(8, drives_at), {}, speed, {});
    drives.narrow_bins.clear();
    for (const Loudspeaker& loudspeaker : show.loudspeakers) directivities.push_back(&loudspeaker.directivity);
    ends = make_ends(show, grid, cells, store);
    coarse_ends = make_ends(show, coarse_grid, coarse_cells, store);
    air = ends->air();
    driven = std::make_unique<maps::DrivenField>(ends->all(), directivities, drives, store, speed);
    coarse = std::make_unique<maps::DrivenField>(coarse_ends->all(), directivities, drives, store, speed);
    for (maps::DrivenField* of : {driven.get(), coarse.get()}) {
        of->set_air(*air);
        of->field.cell.frame = frame_of({180.0, 0.0, 0.0});
        of->field.refine = false;
    }
}

Scene& scene() {
    static Scene one;
    return one;
}

template <class Real>
PlainField<Real> Scene::plain(std::size_t some_cells) const {
    PlainField<Real> plain;
    plain.loudspeakers = show.loudspeakers.size();
    plain.images = kVias;
    plain.frequencies = maps::kLastBin + 1;
    plain.speed = static_cast<Real>(speed);
    const Surroundings around(show.air, show.stage.surfaces);
    plain.directivity.resize(1);
    plain.air.resize(kVias);
    std::vector<double> hz;
    for (int bin = 0; bin <= maps::kLastBin; ++bin) hz.push_back(maps::bin_hz(bin));
    for (const double f : hz) plain.hz.push_back(static_cast<Real>(f));
    for (int row = 0; row <= 180 * static_cast<int>(kRowsPerDegree) + 1; ++row)
        for (const double f : hz)
            plain.directivity[0].push_back(static_cast<Real>(
                directivity_gain(show.loudspeakers[0].directivity, {radians(row / kRowsPerDegree), 0.0}, f, speed)));
    for (std::size_t via = 0; via < kVias; ++via)
        for (int row = 0; row < 60 * static_cast<int>(kAirRowsPerMetre); ++row)
            for (const double f : hz)
                plain.air[via].push_back(static_cast<Real>(
                    around.reflections(f)[via] * db_to_ratio(-around.air.db_per_m(f) * row / kAirRowsPerMetre)));
    plain.drives.resize(plain.loudspeakers * plain.frequencies);
    for (std::size_t f = 0; f < hz.size(); ++f) {
        Complex drives_here[8];
        drives_at(hz[f], drives_here);
        for (std::size_t l = 0; l < plain.loudspeakers; ++l)
            plain.drives[l * plain.frequencies + f] = std::complex<Real>(drives_here[l]);
    }
    Input microphone;
    microphone.transducer = Microphone{PatternName::cardioid, false, {}, {}};
    microphone.aim = {180.0, 0.0, 0.0};
    for (std::size_t cell = 0; cell < some_cells; ++cell) {
        microphone.position = {cells.x[cell], cells.y[cell], kHearingHeight};
        for (const Loudspeaker& loudspeaker : show.loudspeakers) {
            const Receiver receiver = receiver_of(microphone);
            const auto legs = legs_between(emitter_of(loudspeaker), receiver,
                                           planes_between(show.stage, loudspeaker.position, microphone.position));
            for (const Leg& leg : legs)
                plain.paths.push_back({static_cast<Real>(leg.held_m),
                                       static_cast<Real>(receiver.pattern.gain(leg.in_angle, 1000.0) / leg.held_m),
                                       static_cast<Real>(degrees(leg.out.off_axis) * kRowsPerDegree),
                                       static_cast<Real>(leg.held_m * kAirRowsPerMetre), 0,
                                       static_cast<std::size_t>(leg.via)});
        }
    }
    return plain;
}
template PlainField<double> Scene::plain<double>(std::size_t) const;
template PlainField<float> Scene::plain<float>(std::size_t) const;

double kernel_flops(const Scene& scene) {
    double slots = 0.0;
    for (const maps::FixedEnd& end : scene.ends->all()) {
        const maps::DirectivityRows& rows = *end.directivity;
        double path = 17.0;  // a phasor: reduction to a turn, two polynomials, doubling
        for (int octave = 0; octave < maps::kOctavesSwept; ++octave) {
            path += 4.0;  // two sums, the phasor an octave up
            if (octave >= rows.octaves)
                path += 2.0;
            else
                path += (octave < rows.low.octaves ? 2.0 : 3.0) + (octave < 6 ? 1.0 : 3.0);
        }
        const double driven = 4.0 * maps::kOctavesSwept;
        slots += maps::kColumns * (end.image_count * path + driven);
    }
    return 2.0 * maps::kBlock * slots * static_cast<double>(scene.cells.index.size());
}

}  // namespace howlmap::bench
