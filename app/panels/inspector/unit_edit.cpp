// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inspector/unit_edit.h"

#include <QKeyEvent>
#include <algorithm>
#include <cmath>

#include "app/export/length_text.h"
#include "app/panels/numbers.h"
#include "app/settings/figures.h"
#include "core/units/lengths.h"

namespace howlmap::app {

UnitEdit::UnitEdit(const Field& field, Units units, QWidget* parent) : QLineEdit(parent), field_(field), units_(units) {
    setAccessibleName(field.label);
    setAlignment(Qt::AlignRight);
    connect(this, &QLineEdit::editingFinished, this, &UnitEdit::read);
}

QString UnitEdit::text_of(double value) const {
    if (field_.kind == FieldKind::length) return length_text(value, units_);
    const QString number = number_text(value, field_.decimals);
    return field_.unit.isEmpty() ? number : number + QLatin1Char(' ') + field_.unit;
}

void UnitEdit::show_value(std::optional<double> value, bool several) {
    value_ = several ? std::nullopt : value;
    setPlaceholderText(several ? tr("several") : field_.may_be_absent ? tr("none") : QString());
    const QString text = value_ ? text_of(*value_) : QString();
    if (text != this->text()) setText(text);
    setModified(false);
    Q_EMIT trouble({});
}

void UnitEdit::read() {
    if (!isModified()) return;
    const QString typed = text().trimmed();
    if (typed.isEmpty() && field_.may_be_absent) {
        setModified(false);
        Q_EMIT entered(std::nullopt);
        return;
    }
    std::optional<double> value = number_of(typed);
    if (field_.kind == FieldKind::length) {
        const auto length =
            parse_length(typed.toStdString(), units_ == Units::imperial ? LengthUnit::feet : LengthUnit::metres);
        value = length ? std::optional<double>(*length) : std::nullopt;
    }
    if (field_.kind == FieldKind::whole && value && *value != std::floor(*value)) value.reset();
    if (!value || !field_.range.holds(*value)) {
        const QString from = text_of(field_.range.low), to = text_of(field_.range.high);
        Q_EMIT trouble(value ? tr("expected %1 to %2").arg(from, to)
                             : tr("cannot be read; expected e.g. %1").arg(text_of(value_.value_or(field_.range.low))));
        return;
    }
    setModified(false);
    Q_EMIT trouble({});
    Q_EMIT entered(value);
}

void UnitEdit::step_by(double steps) {
    if (isModified()) read();
    const double from = value_.value_or(0.0);
    const double to = std::clamp(std::round((from + steps * field_.step) / field_.step) * field_.step, field_.range.low,
                                 field_.range.high);
    if (!field_.range.holds(to) || to == from) return;
    setText(text_of(to));
    setModified(false);
    Q_EMIT trouble({});
    Q_EMIT entered(to);
}

void UnitEdit::keyPressEvent(QKeyEvent* event) {
    const double size = event->modifiers() & Qt::ShiftModifier ? 10.0 : 1.0;
    if (event->key() == Qt::Key_Up) return step_by(size);
    if (event->key() == Qt::Key_Down) return step_by(-size);
    if (event->key() == Qt::Key_Escape && isModified())
        return show_value(value_, !value_ && !placeholderText().isEmpty() && !field_.may_be_absent);
    QLineEdit::keyPressEvent(event);
}

}  // namespace howlmap::app
