"""Words for what happens to people and animals: falling, going in, feeling ill, standing too near.

Words are parted by spaces, the words of a phrase joined by `_`; a `*` stands for any ending. Data with no logic.
"""

from __future__ import annotations

PEOPLE: dict[str, str] = {
    "hole": "hole opening open_tank open_septic pit manhole edge open_lid open_pit open_one hoyo agujero",
    "there": "there in_there down_there",
    "in": "in into inside down through thru en al dentro adentro under underneath inn in_to headfirst",
    "near": (
        "near next_to close_to closer_to by beside at around on on_top_of over to toward towards onto "
        "at_the_edge in_front_of past into above junto_a cerca_de cerca_del cerca close_by up_to over_to "
        "heading_for headed_for go_for in along outside against across"
    ),
    "body": "head heads face nose arm arms hand hands foot feet leg legs fingers upper_body body shoulder",
    "fall": (
        "fell fallen fall falling falls fel felled slipped slip slid tumbled tumble toppled topple plunged "
        "plunge stumbled tripped dropped drop plopped flopped splashed"
    ),
    "plain_fall": "fell fallen falling fall felled tumbled",
    "move": (
        "sank sunk went gone goes go stepped step jumped jump jumps walked walk backed disappeared "
        "dissapeared vanished pushed crashed rolled got flew ran"
    ),
    "went": "went gone goes got",
    "under": "under underwater below down",
    "stuck": "stuck trapped floating submerged sinking yelling screaming drowned",
    "drown": "under_water underwater drowning drowned drown sinking trapped ahogando",
    "pull_out": "get getting pull pulling reach save rescue lift drag fish pulled got dragged hauled fished",
    "out": "out",
    "climb": (
        "climb climbs climbed climbing crawl crawls crawled crawling jump jumping jumped hop hops hopping "
        "hopped dive diving dove lower lowering lowered squeeze squeezing squeezed enter entering enters "
        "entered slide sliding meterme meter"
    ),
    "lower": "lower lowering lowered send sending sent",
    "climb_on": (
        "climb climbs climbed climbing crawl crawled crawling hop hopping hopped lower lowering lowered "
        "squeeze dive diving jump jumping jumped enter entering"
    ),
    "go": ("go going goes went gone get getting gets got step stepping head heading goin run running drop dropping"),
    "going": "going go goin",
    "intend": "am is are will to going gonna about want wants need needs have got let must ready decided now",
    "entrar": (
        "voy_a_entrar voy_a_bajar voy_a_meterme voy_a_meter voy_a_saltar me_voy_a_meter estoy_entrando "
        "va_a_entrar va_a_bajar va_a_meterse esta_entrando entrar_al"
    ),
    "after": "after for_him for_her to_save to_rescue",
    "fetch": "get grab lift drag carry save rescue help pull reach fetch retrieve unclog clean fix scoop shovel",
    "lost_thing": (
        "phone ball toy ring keys glasses tape pole him her them it dog cat puppy kid child boy girl baby son "
        "daughter husband wife goat calf"
    ),
    "reach": "reach reaching reached reaches reachin",
    "put": (
        "put puts putting stick sticks sticking stuck poke poked poking dangle dangling dangled dip dipping "
        "has got have had"
    ),
    "ladder": "ladder",
    "ill": (
        "going_to_be_sick going_to_be_ill gas_poisoning went_black went_dark dizzy dizziness dizy woozy "
        "lightheaded light_headed lighthead lightheadedness light_head queasy nauseous nauseated nausea "
        "nauseas nausious faint fainty fainting fainted faints mareado mareada mareo mareos vertigo "
        "disoriented disorientated throwing_up throw_up threw_up throws_up puking puke puked vomiting vomit "
        "vomited vomits vomitando barfing barf barfed hurl dry_heaving passed_out passing_out pass_out "
        "passes_out past_out blacked_out blacking_out black_out blackout knocked_out keeled_over keel_over "
        "unconscious unresponsive lost_consciousness losing_consciousness out_cold desmayo desmaye desmayado "
        "desmayada desmayando inconsciente seizure seizing seizures no_pulse can_not_feel_pulse seeing_stars "
        "seeing_double seeing_spots see_spots see_stars see_double blurry_vision tight_chest chest_tight "
        "chest_hurts chest_pain chest_pains chest_is_tight chest_feels_tight pain_in_chest pain_in_my_chest "
        "heart_racing heart_pounding heart_is_racing heart_is_pounding heart_attack short_breath "
        "short_of_breath shortness_breath shortness_of_breath breathless gasping choking chokin suffocating "
        "suffocate asphyxiat* electrocution room_is_spinning everything_is_spinning world_is_spinning "
        "everything_spinning head_spinning head_is_spinning head_swimming head_pounding head_is_pounding "
        "got_the_spins the_spins spinning_head dying_here turning_blue turned_blue lips_are_blue lips_blue "
        "went_limp gone_limp is_limp goes_limp convulsing foaming slurring_words need_a_doctor need_doctor "
        "need_medic gassed in_a_daze out_like going_numb tunnel_vision no_respira"
    ),
    "ache": (
        "headache headaches headach hedache headake migraine dolor_de_cabeza duele_la_cabeza cabeza_me_duele "
        "duele_mucho_la_cabeza cabeza_duele"
    ),
    "head": "head",
    "hurt": (
        "hurts hurting hurt aches aching ache pounding pounds throbs throbbing spinning spins killing "
        "splitting swimming swims exploding swirling funny weird heavy light foggy"
    ),
    "feel": "feel feels feeling felt feelin siento siente sintiendo",
    "weak": (
        "funny weird wierd strange odd off rough terrible awful horrible bad drunk lousy crappy crap shit "
        "death clammy dying sick ill weak shaky drowsy sleepy spacey loopy poisoned out_of_it not_right mal "
        "enfermo enferma foggy floaty confused tired_and_foggy unwell hot_and_cold numb wobbly tingly groggy "
        "high heavy_headed dazed pale sick_stomach sick_to_my_stomach stoned light hot_and yucky icky"
    ),
    "unwell": (
        "feel_unwell feels_unwell feeling_unwell sick_to_my_stomach sick_feeling sick_to_stomach "
        "my_stomach_is_turning stomach_turning"
    ),
    "state": (
        "sick ill unwell weak woozy shaky wobbly out_of_it confused drowsy sleepy groggy loopy spacey foggy "
        "poisoned overcome pale grey gray blue white clammy numb short_of_breath slurring gagging "
        "coughing_bad coughing_badly coughing_hard coughing_blood coughing_a_lot drunk disoriented wobbling "
        "swaying strange weird staggering talking_nonsense not_making_sense making_no_sense funny nauseous "
        "green hurt_bad bleeding bleeding_badly"
    ),
    "look": (
        "look looks looking looked seem seems seeming act acts acting acted get getting gets got turn turned "
        "turning went gone going feel feels feeling felt is are am was were become becoming be talking "
        "walking"
    ),
    "senses": "lips hands fingers face feet arms legs vision eyes throat lungs ears eye",
    "sense_hurt": (
        "burning burns burn stinging sting closing ringing tight blurry blurred fuzzy going blue tingling "
        "tingly numb weak wobbly jelly giving_out gave_out gave"
    ),
    "breath": "breathe breathing breath breaths air respirar respira breathin",
    "no_breath": (
        "can_not could_not hardly barely hard trouble difficulty struggling struggle struggles hard_time "
        "unable not_able stopped stop no_puedo having_trouble cant_catch shallow quit scarcely difficult "
        "heavy"
    ),
    "no_answer": (
        "can_not_focus not_responsive no_breathing not_awake no_puede_respirar stopped_responding "
        "stopped_talking stopped_answering not_breathing stopped_breathing quit_breathing not_moving "
        "is_not_moving not_responding not_waking not_waking_up not_answering not_conscious not_talking "
        "not_respond not_wake not_wake_up not_get_up not_come_to not_answer_me stopped_moving can_not_wake "
        "can_not_stand can_not_walk can_not_see_straight can_not_think_straight can_not_feel_my "
        "can_not_stay_awake keeps_coughing keeps_vomiting keeps_throwing keeps_gagging keeps_shaking "
        "can_not_think no_answer no_responde can_not_keep_my_eyes hardly_stand barely_stand no_despierta "
        "not_making_sense makes_no_sense making_no_sense not_making_any_sense not_walk_straight"
    ),
    "down_state": (
        "hit_the_deck face_down lying_there laying_there lying_on laying_on slumped limp hit_the_ground "
        "dropped_to_the_ground on_the_ground on_the_floor lying_down laying_down fell_over fell_down "
        "went_down flat_on lying_in laying_in lying_next fell_on_the_ground hit_the_grass is_lying is_laying"
    ),
    "drop": "dropped collapsed crumpled slumped dropping",
    "is_down": (
        "is_down are_down went_down man_down is_hurt got_hurt is_injured gets_hurt hurt_bad is_dead is_dying died"
    ),
    "gas": ("gas gases smell smells fumes fume stink stench vapor vapors vapour* odor odour methane it stuff air that"),
    "gas_strong": "gas gases fumes fume methane sewer_gas vapors vapor",
    "got_to": (
        "got_to gets_to getting_to overcame overcoming overwhelmed knocked_me knocked_him knocked_her "
        "making_me making_him making_her making_us made_me made_him made_her makes_me makes_him makes_us "
        "made_us got_me got_him got_us gave_me giving_me gives_me"
    ),
    "sickened": (
        "me him her us over down back sick ill dizzy gag cough faint feel throw_up puke vomit weird funny out"
    ),
    "breathed": (
        "breathed breathing inhaled inhaling breathe overcome whiff poisoned sniffed took_a_breath "
        "breathed_in breathed_it"
    ),
    "help": (
        "help ayuda auxilio socorro sos mayday emergency emergencia ambulance paramedics 911 nine_one_one ambulancia"
    ),
    "lean": (
        "leaning leans leaned lean hanging peering peeking peers bending bent crouching kneeling kneels "
        "straddling dangling squatting hovering peek stooping ducking asomada asomado"
    ),
    "watch": "looking looks look looked looking_in",
    "stand": (
        "standing stands stood jumping jumped jumps sitting sat sits walking walked walks stomping parked "
        "playing dancing stepped stepping running runs riding crawling hopping bouncing play climbing drove "
        "driving"
    ),
    "over": "over into in above across down inside",
    "on": "on on_top_of across over onto on_top",
    "almost": "almost nearly just_about about_to gonna going_to close_to_falling",
    "too_close": "too_close so_close dangerously_close very_close too_near really_close way_too_close inches_from",
    "throw": (
        "throwing throws threw dropping drops dropped tossing poking putting dipping dangling sticking poke stuck"
    ),
    "gone_child": "can_not_find could_not_find can_not_see lost_sight",
    "after_them": "after_him after_her after_them after_my after_it after_dog after_kid after_son",
    "climbing_in": "climbing_in climbs_in crawling_in",
    "down": "down",
    "entering": "entering enter enters entered climb_inside go_inside_tank inside_tank",
    "fall_went": "fell fall falling went slipped tumbled stepped fallen go_in walked tripped",
    "go_after": "go_after went_after goes_after goin_after going_after jumped_after climbed_after jump_after",
    "in_down": "in into down in_there down_there under through",
    "collapse": "collapsed collapsing collapse collapses kollapsed",
    "limb": "arm arms hand hands leg legs foot feet shoulder",
    "man_down": "man_down person_down child_down kid_down",
    "near_word": "by near beside at next_to on over close_to",
    "not_away": (
        "not_stay_away not_get_away not_keep_away not_leave keep_coming_back keeps_coming_back "
        "keeps_going_back not_move_away keep_going_back not_listen"
    ),
    "not_out": (
        "can_not_get_out can_not_get_him_out can_not_get_her_out can_not_get_them_out could_not_get_out "
        "can_not_climb_out can_not_get_back_out not_come_out can_not_come_out can_not_reach_him "
        "can_not_reach_her can_not_reach_them can_not_get_dog_out"
    ),
    "not_up": "not_come_up not_coming_up has_not_come_up have_not_come_up not_come_back_up",
    "out_of_breath": "out_of_breath",
    "out_of_it": "out_of_tank out_of_hole out_of_pit out_of_sewage out_of_septic out_of_there out_of_manhole",
    "plea": (
        "needs_ambulance needs_doctor needs_help_now need_help_now call_for_help call_for_ambulance "
        "call_for_an_ambulance send_someone send_somebody call_help send_help get_help call_911 need_911 "
        "i_called_911 called_911 need_an_ambulance call_an_ambulance call_ambulance get_an_ambulance "
        "send_an_ambulance need_ambulance need_paramedics need_doctor need_a_medic this_is_an_emergency "
        "it_is_an_emergency have_an_emergency ambulance_now is_dying he_is_dead she_is_dead is_dead"
    ),
    "pull_plea": (
        "can_not_get could_not_get can_not_pull trying_to_get need_to_get have_to_get help_get help_me_get "
        "try_to_get how_do_i_get get_help_get please_get trying_to_pull how_do_we_get can_not_reach "
        "to_pull_out need_help_getting"
    ),
    "reach_it": "reaching_in reaching_down_in reach_in_and reach_in_now reach_in_there reaching_into reach_in_to",
    "there_is": "there_is i_hear can_hear i_see",
    "up_to_body": (
        "up_to_chest up_to_waist up_to_neck up_to_hips up_to_knees up_to_shoulders in_to_hips up_to_knee_in"
    ),
    "vanish": "disappeared dissapeared vanished disappear",
    "watch_help": "near close by around watch help play lean come",
    "in_bare": "in under through inn down",
    "lower_in": "down in_on_rope in_there into into_tank down_in down_there down_into in_tank in_hole",
    "drop_like": "to_ground like and unconscious on_ground next_to dead",
    "in_the_tank": "in_the_tank in_tank in_my_tank",
    "oneself": "myself himself herself themselves",
    "pair": "weak shaky wobbly drowsy sleepy confused clammy sick ill groggy sweaty",
    "cough": "coughing wheezing gagging",
    "and_now": "and_now and_not and_he and_she and_can_not and_has and_is",
    "over_above": "over above across",
    "help_word": "help save",
    "help_me": (
        "anybody_help anyone_help need_help_here we_need_help_here call_somebody call_someone "
        "call_somebody_now help_me help_us help_him help_her somebody_help someone_help need_help i_need_help "
        "we_need_help please_help_me help_now help_quick call_911 emergency_here ayudame ayudenme "
        "ambulance_now ambulance_please help_help it_is_emergency this_is_emergency need_911_now "
        "help_me_please i_need_an_ambulance"
    ),
    "lower_only": "lower lowering lowered",
    "sniff": "sniffing sniffs drinking licking",
    "of_sudden": "of_sudden all_of_a_sudden suddenly",
}
