// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/response/curve_choice.h"

#include <QAbstractItemView>

#include <algorithm>

#include "app/document/analysis_service.h"
#include "app/document/document.h"
#include "app/document/response_service.h"
#include "app/settings/figures.h"
#include "core/report/words.h"

namespace howlmap::app {
namespace {
constexpr std::size_t kPairs = 12;
}

CurveChoice::CurveChoice(const Workspace& workspace, QWidget* parent) : QComboBox(parent), work_(workspace) {
    setObjectName(QStringLiteral("curve_choice"));
    setAccessibleName(tr("Curve of"));
    setToolTip(tr("Whose loop gain is drawn: of everything together, or of a part as if it were alone."));
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(18);
    connect(this, &QComboBox::activated, this,
            [this](int index) { work_.response.set_open(choices_[static_cast<std::size_t>(index)]); });
    connect(&work_.analysis, &AnalysisService::updated, this, [this] {
        if (!work_.document.in_gesture() && !view()->isVisible()) fill();
    });
    connect(&work_.document, &Document::replaced, this, &CurveChoice::fill);
    fill();
}

void CurveChoice::add(const QString& text, const OpenLoops& open) {
    addItem(text);
    choices_.push_back(open);
}

void CurveChoice::fill() {
    const Show& show = work_.document.show();
    clear();
    choices_.clear();
    add(tr("All loops together"), {});
    for (const Mix& mix : show.mixes) add(tr("Mix %1 %2 alone").arg(mix.number).arg(qstr(mix.name)), {{}, {}, mix.id});
    for (const Input& input : show.inputs)
        if (!is_line(input)) add(tr("Input %1 %2 alone").arg(input.channel).arg(qstr(input.name)), {input.id, {}, {}});
    if (const auto result = work_.analysis.result())
        for (std::size_t i = 0; i < std::min(kPairs, result->pairs.size()); ++i) {
            const PairFigure& pair = result->pairs[i];
            add(tr("%1 → %2").arg(name_text(show, pair.loudspeaker), name_text(show, pair.input)),
                {pair.input, pair.loudspeaker, pair.mix});
        }
    const auto now = std::ranges::find(choices_, work_.response.open());
    if (now == choices_.end()) return work_.response.set_open({});
    setCurrentIndex(static_cast<int>(now - choices_.begin()));
}

}  // namespace howlmap::app
