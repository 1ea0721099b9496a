// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/listening/listening.h"

#include "core/listening/ears.h"
#include "core/listening/exposure.h"

namespace howlmap {
namespace {
PerformerFigure figure_of(const Show& show, const ChainEnergies& chains, const Performer& performer) {
    const OwnAndOthers sums = own_and_others(sources_at_ear(show, chains, performer));
    PerformerFigure figure;
    figure.id = performer.id;
    figure.own_dba = level_dba(sums.own);
    figure.others_dba = level_dba(sums.others);
    figure.ear_dba = level_of(a_weighted(sums.own) + a_weighted(sums.others));
    if (figure.own_dba && figure.others_dba) figure.hear_margin_db = *figure.own_dba - *figure.others_dba;
    if (figure.ear_dba) {
        figure.niosh_minutes = niosh_minutes(*figure.ear_dba);
        figure.osha_minutes = osha_minutes(*figure.ear_dba);
    }
    return figure;
}
}  // namespace

std::vector<PerformerFigure> performer_figures(const Show& show) {
    const ChainEnergies chains(show);
    std::vector<PerformerFigure> figures;
    for (const Performer& performer : show.performers) figures.push_back(figure_of(show, chains, performer));
    return figures;
}

std::vector<HouseFigure> house_figures(const Show& show) {
    const ChainEnergies chains(show);
    std::vector<HouseFigure> figures;
    for (const Listener& listener : show.listeners) {
        double wash = 0.0;
        for (const EarSource& source : sources_at_point(show, chains, listener.position, true))
            wash += source.weighted();
        HouseFigure figure{listener.id, level_of(wash), std::nullopt};
        if (figure.wash_dba) figure.against_target_db = *figure.wash_dba - show.system.house_target_dba;
        figures.push_back(figure);
    }
    return figures;
}

}  // namespace howlmap
