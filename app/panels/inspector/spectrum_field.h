// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/panels/inspector/field_builder.h"

namespace howlmap::app {

/// Named shapes in the order of the file, and after them "third-octave bands".
QList<Choice> spectrum_choices();
int spectrum_choice(const Spectrum& spectrum);
/// Bands start as those of the shape that was chosen before.
void choose_spectrum(Spectrum& spectrum, int choice);

template <class Find, class Member>
Field& add_spectrum(FieldBuilder<Find>& build, Member member) {
    Field& field = build.add(
        "Spectrum", FieldKind::choice, [member](auto& item) { return QVariant(spectrum_choice(member(item))); },
        [member](auto& item, const QVariant& value) { choose_spectrum(member(item), value.toInt()); });
    field.choices = [](const Show&) { return spectrum_choices(); };
    field.tip = inspector_text("How the sound is spread over frequency; its level is told on its own");
    return field;
}

}  // namespace howlmap::app
