// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/listening/ears.h"

#include <fmt/format.h>

#include "core/show/find.h"
#include "core/units/level.h"
#include "core/units/translate.h"

namespace howlmap {
namespace {
/// Every send of every mix that feeds a loudspeaker, with `path` (response included) as the way to the point.
void add_loudspeaker(const Show& show, const ChainEnergies& chains, int loudspeaker, const BandEnergies& path,
                     std::vector<EarSource>& sources) {
    const std::string& id = show.loudspeakers[static_cast<std::size_t>(loudspeaker)].id;
    for (int m = 0; m < static_cast<int>(show.mixes.size()); ++m) {
        const Mix& mix = show.mixes[static_cast<std::size_t>(m)];
        if (std::find(mix.loudspeakers.begin(), mix.loudspeakers.end(), id) == mix.loudspeakers.end()) continue;
        const BandEnergies way = path * chains.mixes[static_cast<std::size_t>(m)];
        for (int s = 0; s < static_cast<int>(mix.sends.size()); ++s) {
            const Send& send = mix.sends[static_cast<std::size_t>(s)];
            const int input = index_by_id(show.inputs, send.input);
            if (input < 0) continue;
            sources.push_back({SourceKind::send, m, s, input, loudspeaker, -1, false, send.level_db,
                               way * chains.inputs[static_cast<std::size_t>(input)]});
        }
    }
}

void add_in_ear(const Show& show, const ChainEnergies& chains, int m, std::vector<EarSource>& sources) {
    const Mix& mix = show.mixes[static_cast<std::size_t>(m)];
    for (int s = 0; s < static_cast<int>(mix.sends.size()); ++s) {
        const Send& send = mix.sends[static_cast<std::size_t>(s)];
        const int input = index_by_id(show.inputs, send.input);
        if (input < 0) continue;
        sources.push_back({SourceKind::send, m, s, input, -1, -1, false, send.level_db,
                           chains.mixes[static_cast<std::size_t>(m)] * chains.inputs[static_cast<std::size_t>(input)]});
    }
}

/// Her own acoustic sound has the spectrum of her first input (pink without one), scaled to its A-weighted level.
void add_own_acoustic(const Show& show, const Performer& performer, std::vector<EarSource>& sources) {
    if (!performer.own_acoustic_dba) return;
    BandEnergies shape = spectrum_energies(SpectrumName::pink);
    for (const Input& input : show.inputs) {
        if (input.performer != performer.id) continue;
        const BandEnergies own = spectrum_energies(input.spectrum);
        if (a_weighted(own) > 0.0) shape = own;
        break;
    }
    sources.push_back({SourceKind::own_acoustic, -1, -1, -1, -1, -1, true, *performer.own_acoustic_dba,
                       shape * (1.0 / a_weighted(shape))});
}

void mark_own(const Show& show, const Performer& performer, std::vector<EarSource>& sources) {
    if (performer.hears == Hears::acoustic) return;
    const int mix = index_by_id(show.mixes, performer.mix);
    for (EarSource& source : sources)
        if (source.kind == SourceKind::send && source.mix == mix &&
            show.inputs[static_cast<std::size_t>(source.input)].performer == performer.id)
            source.own = true;
}
}  // namespace

BandEnergies EarSource::energies() const { return ratio * db_to_energy(level_db); }
double EarSource::weighted() const { return a_weighted(ratio) * db_to_energy(level_db); }

std::vector<EarSource> sources_at_point(const Show& show, const ChainEnergies& chains, Vec3 point, bool stage_only) {
    std::vector<EarSource> sources;
    for (int l = 0; l < static_cast<int>(show.loudspeakers.size()); ++l) {
        const Loudspeaker& loudspeaker = show.loudspeakers[static_cast<std::size_t>(l)];
        if (stage_only && !makes_wash(loudspeaker.kind)) continue;
        const BandEnergies path =
            path_energies(show, loudspeaker, point) * chains.loudspeakers[static_cast<std::size_t>(l)];
        add_loudspeaker(show, chains, l, path, sources);
    }
    return sources;
}

std::vector<EarSource> sources_at_ear(const Show& show, const ChainEnergies& chains, const Performer& performer) {
    const Vec3 ear = ear_of(show, performer);
    std::vector<EarSource> sources = sources_at_point(show, chains, ear, false);
    for (int b = 0; b < static_cast<int>(show.backline.size()); ++b) {
        const Backline& item = show.backline[static_cast<std::size_t>(b)];
        const BandEnergies shape = spectrum_energies(item.spectrum);
        if (!(a_weighted(shape) > 0.0)) continue;
        // Its level is A-weighted, so the shape is scaled to that.
        sources.push_back({SourceKind::backline, -1, -1, -1, -1, b, false, item.level_1m_dba,
                           backline_energies(show, item, ear) * shape * (1.0 / a_weighted(shape))});
    }
    add_own_acoustic(show, performer, sources);
    if (performer.hears == Hears::in_ear) {
        const double through_seal = db_to_energy(-performer.seal_db);
        for (EarSource& source : sources) source.ratio = source.ratio * through_seal;
        const int mix = index_by_id(show.mixes, performer.mix);
        if (mix >= 0) add_in_ear(show, chains, mix, sources);
    }
    mark_own(show, performer, sources);
    return sources;
}

OwnAndOthers own_and_others(const std::vector<EarSource>& sources) {
    OwnAndOthers sums;
    for (const EarSource& source : sources) (source.own ? sums.own : sums.others) += source.energies();
    return sums;
}

std::string name_of(const Show& show, const EarSource& source) {
    if (source.kind == SourceKind::own_acoustic) return translate("listening", "her own sound");
    if (source.kind == SourceKind::backline) return called(show.backline[static_cast<std::size_t>(source.backline)]);
    const std::string input = called(show.inputs[static_cast<std::size_t>(source.input)]);
    if (source.loudspeaker < 0) return fmt::format(fmt::runtime(translate("listening", "{} in the ear")), input);
    return fmt::format(fmt::runtime(translate("listening", "{} in {}")), input,
                       called(show.loudspeakers[static_cast<std::size_t>(source.loudspeaker)]));
}

}  // namespace howlmap
