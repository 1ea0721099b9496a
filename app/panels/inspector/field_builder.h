// SPDX-License-Identifier: GPL-3.0-or-later
// Builds fields from a way to find the object and a reference to its member, so that each property is one line.
#pragma once
#include <utility>

#include "app/panels/inspector/field.h"
#include "core/show/find.h"

namespace howlmap::app {

inline QString inspector_text(const char* text) { return QCoreApplication::translate("Inspector", text); }

/// `Find`: (Show&, id) -> T*, null where the property does not apply. A const show is cast, never written through.
template <class Find>
class FieldBuilder {
  public:
    FieldBuilder(Fields& fields, Find find) : fields_(fields), find_(std::move(find)) {}

    /// `moves`: what follows is place, aim or size.
    void group(const char* title, bool moves = false) {
        group_ = inspector_text(title);
        moves_ = moves;
    }

    template <class Member>
    Field& text(const char* label, Member member, FieldKind kind = FieldKind::text) {
        return add(
            label, kind, [member](auto& item) { return QVariant(QString::fromStdString(member(item))); },
            [member](auto& item, const QVariant& value) { member(item) = value.toString().toStdString(); });
    }
    /// `unit_scale`: shown value = kept value / unit_scale.
    template <class Member>
    Field& number(const char* label, const char* unit, Range range, int decimals, double step, Member member) {
        Field& field = add(
            label, FieldKind::number, [member](auto& item) { return QVariant(double(member(item))); },
            [member](auto& item, const QVariant& value) { member(item) = value.toDouble(); });
        return describe(field, unit, range, decimals, step);
    }
    template <class Member>
    Field& optional_number(const char* label, const char* unit, Range range, int decimals, double step, Member member) {
        Field& field = add(
            label, FieldKind::number,
            [member](auto& item) { return member(item) ? QVariant(*member(item)) : QVariant(); },
            [member](auto& item, const QVariant& value) {
                if (value.isValid())
                    member(item) = value.toDouble();
                else
                    member(item).reset();
            });
        field.may_be_absent = true;
        return describe(field, unit, range, decimals, step);
    }
    template <class Member>
    Field& length(const char* label, Range range, Member member) {
        Field& field = add(
            label, FieldKind::length, [member](auto& item) { return QVariant(double(member(item))); },
            [member](auto& item, const QVariant& value) { member(item) = value.toDouble(); });
        return describe(field, "", range, 2, 0.01);
    }
    template <class Member>
    Field& whole(const char* label, const char* unit, Range range, Member member) {
        Field& field = add(
            label, FieldKind::whole, [member](auto& item) { return QVariant(double(member(item))); },
            [member](auto& item, const QVariant& value) {
                using Number = std::remove_reference_t<decltype(member(item))>;
                member(item) = static_cast<Number>(value.toDouble());
            });
        return describe(field, unit, range, 0, 1.0);
    }
    template <class Member>
    Field& flag(const char* label, Member member) {
        return add(
            label, FieldKind::flag, [member](auto& item) { return QVariant(bool(member(item))); },
            [member](auto& item, const QVariant& value) { member(item) = value.toBool(); });
    }
    /// An enum whose values are 0, 1, .. in the order of the labels.
    template <class Member>
    Field& choice(const char* label, const QStringList& labels, Member member) {
        Field& field = add(
            label, FieldKind::choice, [member](auto& item) { return QVariant(int(member(item))); },
            [member](auto& item, const QVariant& value) {
                using Enum = std::remove_reference_t<decltype(member(item))>;
                member(item) = static_cast<Enum>(value.toInt());
            });
        field.choices = [labels](const Show&) {
            QList<Choice> choices;
            for (int i = 0; i < labels.size(); ++i) choices.append({labels[i], i});
            return choices;
        };
        return field;
    }
    /// A text member that names one of the choices.
    template <class Member>
    Field& one_of(const char* label, std::function<QList<Choice>(const Show&)> choices, Member member) {
        Field& field = text(label, member, FieldKind::choice);
        field.choices = std::move(choices);
        return field;
    }
    template <class Get, class Set>
    Field& add(const char* label, FieldKind kind, Get get, Set set) {
        Field field;
        field.group = group_;
        field.label = inspector_text(label);
        field.kind = kind;
        field.moves = moves_;
        field.get = [find = find_, get](const Show& show, const std::string& id) -> std::optional<QVariant> {
            auto* item = find(const_cast<Show&>(show), id);
            return item ? std::optional<QVariant>(get(*item)) : std::nullopt;
        };
        field.set = [find = find_, set](Show& show, const std::string& id, const QVariant& value) {
            if (auto* item = find(show, id)) set(*item, value);
        };
        fields_.append(std::move(field));
        return fields_.last();
    }

    Find find() const { return find_; }

  private:
    static Field& describe(Field& field, const char* unit, Range range, int decimals, double step) {
        field.unit = inspector_text(unit);
        field.range = range;
        field.decimals = decimals;
        field.step = step;
        return field;
    }

    Fields& fields_;
    Find find_;
    QString group_;
    bool moves_ = false;
};

inline QStringList polarity_labels() { return {inspector_text("normal"), inspector_text("inverted")}; }

/// Mixes and performers by id, with an empty choice for "none".
QList<Choice> mix_choices(const Show& show);
QList<Choice> performer_choices(const Show& show);

/// Fields of an optional high-pass: corner (empty: none) and order.
template <class Find, class Member>
void add_high_pass(FieldBuilder<Find>& build, Member member) {
    Field& hz = build.add(
        "High-pass", FieldKind::number,
        [member](auto& item) { return member(item) ? QVariant(member(item)->hz) : QVariant(); },
        [member](auto& item, const QVariant& value) {
            if (!value.isValid()) return member(item).reset();
            if (!member(item)) member(item).emplace();
            member(item)->hz = value.toDouble();
        });
    hz.unit = inspector_text("Hz");
    hz.range = limits::kHz;
    hz.decimals = 0;
    hz.step = 5.0;
    hz.may_be_absent = true;
    hz.tip = inspector_text("Butterworth corner; empty: none");
    Field& order = build.add(
        "High-pass order", FieldKind::whole,
        [member](auto& item) { return member(item) ? QVariant(double(member(item)->order)) : QVariant(); },
        [member](auto& item, const QVariant& value) {
            if (member(item) && value.isValid()) member(item)->order = value.toInt();
        });
    order.range = limits::kOrder;
    order.decimals = 0;
    order.may_be_absent = true;
    order.tip = inspector_text("6 dB an octave for each order");
}

/// Corners of a transducer's response.
template <class Find, class Member>
void add_response(FieldBuilder<Find>& build, Member member) {
    build.group("Response");
    build
        .optional_number(
            "Low corner", "Hz", limits::kHz, 0, 5.0, [member](auto& i) -> auto& { return member(i).low_hz; })
        .tip = inspector_text("Butterworth high-pass; empty: none");
    build.whole(
        "Low order", "", limits::kOrder, [member](auto& i) -> auto& { return member(i).low_order; });
    build
        .optional_number(
            "High corner", "Hz", limits::kHz, 0, 500.0, [member](auto& i) -> auto& { return member(i).high_hz; })
        .tip = inspector_text("Butterworth low-pass; empty: none");
    build.whole(
        "High order", "", limits::kOrder, [member](auto& i) -> auto& { return member(i).high_order; });
}

}  // namespace howlmap::app
